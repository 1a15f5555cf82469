import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of a current that flows for a share of the period. */
export const pulseMean = defineFormula({
  id: 'pulse-mean',
  title: 'Mean of a rectangular pulse',
  subject: 'flyback',
  meaning: 'Mean of a current that flows for a share of the period.',
  expression: '\\bar{I} = D\\,I',
  output: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean current', unit: 'A' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
    current: { tex: 'I', dimension: 'current', meaning: 'current while it flows', unit: 'A' },
  },
  compute({ duty, current }) {
    return duty * current;
  },
  validity: ['Ripple left out.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14'),
      inputs: { duty: '0.538', current: '4.33 A' },
      printed: '2.33 A',
      kind: 'published',
    },
  ],
});
