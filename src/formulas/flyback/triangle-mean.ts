import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Mean of a current that ramps from zero for a share of the period. */
export const triangleMean = defineFormula({
  id: 'triangle-mean',
  title: 'Mean of a triangular pulse',
  subject: 'flyback',
  meaning: 'Mean of a current that ramps from zero for a share of the period.',
  expression: '\\bar{I} = \\frac{\\hat{I}\\,D}{2}',
  output: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean current', unit: 'A' },
  inputs: {
    peak: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
  },
  compute({ peak, duty }) {
    return (peak * duty) / 2;
  },
  validity: ['The current starts from zero.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17'),
      inputs: { peak: '11.6 A', duty: '0.483' },
      printed: '2.8 A',
      kind: 'published',
    },
    {
      source: workedWith('numerical integration of the ramp'),
      inputs: { peak: '11.6 A', duty: '0.483' },
      printed: '2.8014 A',
      kind: 'independent',
    },
  ],
});
