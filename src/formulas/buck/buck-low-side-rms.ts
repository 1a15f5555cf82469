import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms in the switch that is on for the rest of the period. */
export const buckLowSideRms = defineFormula({
  id: 'buck-low-side-rms',
  title: 'Lower switch current of a buck',
  subject: 'buck',
  meaning: 'Rms in the switch that is on for the rest of the period.',
  expression: 'I_{L2} = I_{L}\\sqrt{1 - D}',
  output: { tex: 'I_{L2}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{L}', dimension: 'current', meaning: 'inductor current, rms', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
  },
  compute({ current, duty }) {
    return current * Math.sqrt(1 - duty);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.rohmBuckLosses, 'calculation example, second row'),
  examples: [
    {
      source: workedWith('numerical integration, 10 A at 12.86 %'),
      inputs: { current: '10 A', duty: '0.128571' },
      printed: '9.3350 A',
      kind: 'independent',
    },
  ],
});
