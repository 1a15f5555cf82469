import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms in the lower switch of a boost, ripple left out. */
export const boostSwitchRms = defineFormula({
  id: 'boost-switch-rms',
  title: 'Switch current of a boost',
  subject: 'buck',
  meaning: 'Rms in the lower switch of a boost, ripple left out.',
  expression: 'I_{S} = \\frac{I_{o}\\sqrt{D}}{1 - D}',
  output: { tex: 'I_{S}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the lower switch', unit: '1' },
  },
  compute({ current, duty }) {
    return duty < 1 ? (current * Math.sqrt(duty)) / (1 - duty) : Number.NaN;
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 23, switch C, its conduction term'),
  examples: [
    {
      source: workedWith('numerical integration over one period'),
      inputs: { current: '5 A', duty: '0.583333' },
      printed: '9.165 A',
      kind: 'independent',
    },
  ],
});
