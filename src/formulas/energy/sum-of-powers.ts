import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Powers that flow side by side, or losses in series, taken together. Folded over any number. */
export const sumOfPowers = defineFormula({
  id: 'sum-of-powers',
  title: 'Sum of powers',
  subject: 'energy',
  meaning: 'Powers that flow side by side, or losses in series, taken together. Folded over any number.',
  expression: 'P = P_{1} + P_{2}',
  output: { tex: 'P', dimension: 'power', meaning: 'power of both', unit: 'W' },
  inputs: {
    first: { tex: 'P_{1}', dimension: 'power', meaning: 'one power', unit: 'W' },
    second: { tex: 'P_{2}', dimension: 'power', meaning: 'the other', unit: 'W' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: ['Both at the same moment.'],
  source: { title: 'Definition', section: 'sum of powers', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { first: '69.00 W', second: '28.57 W' }, printed: '97.57 W', kind: 'independent' }],
});
