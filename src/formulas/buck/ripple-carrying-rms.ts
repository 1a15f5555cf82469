import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of an inductor current with its triangular ripple. */
export const rippleCarryingRms = defineFormula({
  id: 'ripple-carrying-rms',
  title: 'Rms of a current with ripple',
  subject: 'buck',
  meaning: 'Rms of an inductor current with its triangular ripple.',
  expression: 'I_{L} = \\sqrt{I^{2} + \\frac{\\Delta I^{2}}{12}}',
  output: { tex: 'I_{L}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'mean current', unit: 'A' },
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  },
  compute({ current, ripple }) {
    return Math.sqrt(current ** 2 + ripple ** 2 / 12);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 12'),
      inputs: { current: '10 A', ripple: '2.6143 A' },
      printed: '10.03 A',
      kind: 'published',
    },
  ],
});
