import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of the voltage on the capacitor: the crest less half of the ripple. */
export const rectifierMean = defineFormula({
  id: 'rectifier-mean',
  title: 'Mean voltage behind a rectifier',
  subject: 'bulk',
  meaning: 'Mean of the voltage on the capacitor: the crest less half of the ripple.',
  expression: '\\bar{V} = \\hat{V} - \\frac{\\Delta V}{2}',
  output: { tex: '\\bar{V}', dimension: 'voltage', meaning: 'mean voltage', unit: 'V' },
  inputs: {
    crest: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  },
  compute({ crest, ripple }) {
    return crest - ripple / 2;
  },
  validity: ['The ripple is taken as a saw-tooth.'],
  source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457'),
  examples: [
    {
      source: cite(PUBLICATIONS.jacobTextbook, 'example 9.1, p. 457'),
      inputs: { crest: '37.598 V', ripple: '3.9581 V' },
      printed: '35.62 V',
      kind: 'published',
    },
  ],
});
