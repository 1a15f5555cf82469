import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Currents of outputs that hang on one converter, taken together. Folded over any number. */
export const sumOfCurrents = defineFormula({
  id: 'sum-of-currents',
  title: 'Sum of currents',
  subject: 'energy',
  meaning: 'Currents of outputs that hang on one converter, taken together. Folded over any number.',
  expression: 'I = I_{1} + I_{2}',
  output: { tex: 'I', dimension: 'current', meaning: 'current of both', unit: 'A' },
  inputs: {
    first: { tex: 'I_{1}', dimension: 'current', meaning: 'one current', unit: 'A' },
    second: { tex: 'I_{2}', dimension: 'current', meaning: 'the other', unit: 'A' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: ['Direct currents at the same moment.'],
  source: { title: 'Definition', section: 'sum of currents into one node', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { first: '3.00 A', second: '2.40 A' }, printed: '5.40 A', kind: 'independent' }],
});
