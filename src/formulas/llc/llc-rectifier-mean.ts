import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean in each of two rectifiers of an LLC. */
export const llcRectifierMean = defineFormula({
  id: 'llc-rectifier-mean',
  title: 'Rectifier mean current of an LLC',
  subject: 'llc',
  meaning: 'Mean in each of two rectifiers of an LLC.',
  expression: '\\bar{I} = \\frac{I_{o}}{2}',
  output: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
  },
  compute({ current }) {
    return current / 2;
  },
  validity: ['Both rectifiers conduct alike.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, secondary currents'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, 110 % of 25 A'),
      inputs: { current: '27.5 A' },
      printed: '13.8 A',
      kind: 'published',
    },
  ],
});
