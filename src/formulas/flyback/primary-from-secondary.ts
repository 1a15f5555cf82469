import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Current in the primary for the current in the secondary at the moment the current passes over. */
export const primaryFromSecondary = defineFormula({
  id: 'primary-from-secondary',
  title: 'Primary current from the secondary',
  subject: 'flyback',
  meaning: 'Current in the primary for the current in the secondary at the moment the current passes over.',
  expression: 'I_{p} = \\frac{I_{s}}{n}',
  output: { tex: 'I_{p}', dimension: 'current', meaning: 'primary current', unit: 'A' },
  inputs: {
    secondary: { tex: 'I_{s}', dimension: 'current', meaning: 'secondary current', unit: 'A' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ secondary, turnsRatio }) {
    return secondary / turnsRatio;
  },
  validity: ['Leakage left out; one output.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-14'),
      inputs: { secondary: '21.65 A', turnsRatio: '5' },
      printed: '4.33 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-17'),
      inputs: { secondary: '46.4 A', turnsRatio: '4' },
      printed: '11.6 A',
      kind: 'published',
    },
  ],
});
