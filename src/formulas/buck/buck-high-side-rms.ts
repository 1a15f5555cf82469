import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms in the switch that is on for the duty. */
export const buckHighSideRms = defineFormula({
  id: 'buck-high-side-rms',
  title: 'Upper switch current of a buck',
  subject: 'buck',
  meaning: 'Rms in the switch that is on for the duty.',
  expression: 'I_{H} = I_{L}\\sqrt{D}',
  output: { tex: 'I_{H}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{L}', dimension: 'current', meaning: 'inductor current, rms', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the upper switch', unit: '1' },
  },
  compute({ current, duty }) {
    return current * Math.sqrt(duty);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.rohmBuckLosses, 'calculation example, first row'),
  examples: [
    {
      source: workedWith('numerical integration, 10 A at 12.86 %'),
      inputs: { current: '10 A', duty: '0.128571' },
      printed: '3.5857 A',
      kind: 'independent',
    },
  ],
});
