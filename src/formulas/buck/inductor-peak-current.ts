import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean current and half of the ripple. */
export const inductorPeakCurrent = defineFormula({
  id: 'inductor-peak-current',
  title: 'Peak inductor current',
  subject: 'buck',
  meaning: 'Mean current and half of the ripple.',
  expression: '\\hat{I} = I + \\frac{\\Delta I}{2}',
  output: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'mean current', unit: 'A' },
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  },
  compute({ current, ripple }) {
    return current + ripple / 2;
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 13'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 13'),
      inputs: { current: '10 A', ripple: '2.6143 A' },
      printed: '11.3 A',
      kind: 'published',
    },
  ],
});
