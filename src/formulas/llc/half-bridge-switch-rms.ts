import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Rms in each of two switches that carry the tank current for half of the period. */
export const halfBridgeSwitchRms = defineFormula({
  id: 'half-bridge-switch-rms',
  title: 'Switch current of a resonant half bridge',
  subject: 'llc',
  meaning: 'Rms in each of two switches that carry the tank current for half of the period.',
  expression: 'I_{S} = \\frac{I_{r}}{\\sqrt{2}}',
  output: { tex: 'I_{S}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{r}', dimension: 'current', meaning: 'current of the resonant tank, rms', unit: 'A' },
  },
  compute({ current }) {
    return current / Math.SQRT2;
  },
  validity: ['Duty of one half.'],
  source: workedWith('derivation: each switch carries half of the period'),
  examples: [
    { source: workedWith('numerical integration of half a sine'), inputs: { current: '1.32 A' }, printed: '0.9334 A', kind: 'independent' },
  ],
});
