import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Rms of what the output capacitor of a boost takes and supplies, ripple left out. */
export const boostOutputCapacitorRms = defineFormula({
  id: 'boost-output-capacitor-rms',
  title: 'Output capacitor current of a boost',
  subject: 'buck',
  meaning: 'Rms of what the output capacitor of a boost takes and supplies, ripple left out.',
  expression: 'I_{C} = I_{o}\\sqrt{\\frac{D}{1 - D}}',
  output: { tex: 'I_{C}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the lower switch', unit: '1' },
  },
  compute({ current, duty }) {
    return duty < 1 ? current * Math.sqrt(duty / (1 - duty)) : Number.NaN;
  },
  validity: ['Continuous conduction, steady output current.'],
  source: workedWith('integration of the diode current'),
  examples: [
    {
      source: workedWith('numerical integration over one period'),
      inputs: { current: '5 A', duty: '0.583333' },
      printed: '5.916 A',
      kind: 'independent',
    },
  ],
});
