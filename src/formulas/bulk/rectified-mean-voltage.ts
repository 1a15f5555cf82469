import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of the rectified sine behind a bridge without a capacitor. */
export const rectifiedMeanVoltage = defineFormula({
  id: 'rectified-mean-voltage',
  title: 'Mean voltage without a capacitor',
  subject: 'bulk',
  meaning: 'Mean of the rectified sine behind a bridge without a capacitor.',
  expression: '\\bar{V} = \\frac{2\\hat{V}}{\\pi}',
  output: { tex: '\\bar{V}', dimension: 'voltage', meaning: 'mean voltage', unit: 'V' },
  inputs: {
    crest: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
  },
  compute({ crest }) {
    return (2 * crest) / Math.PI;
  },
  validity: ['Full-wave rectifier.'],
  source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
  examples: [
    {
      source: cite(PUBLICATIONS.bimbhraTextbook, 'example 3.21, p. 122'),
      inputs: { crest: '325.269 V' },
      printed: '207.07 V',
      kind: 'published',
    },
  ],
});
