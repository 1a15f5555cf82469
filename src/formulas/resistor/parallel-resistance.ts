import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Resistance of two resistors side by side; folded over any number. */
export const parallelResistance = defineFormula({
  id: 'parallel-resistance',
  title: 'Resistors in parallel',
  subject: 'resistor',
  meaning: 'Resistance of two resistors side by side; folded over any number.',
  expression: 'R = \\frac{R_{1}\\,R_{2}}{R_{1} + R_{2}}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance of both', unit: 'kΩ' },
  inputs: {
    first: { tex: 'R_{1}', dimension: 'resistance', meaning: 'first resistance', unit: 'kΩ' },
    second: { tex: 'R_{2}', dimension: 'resistance', meaning: 'second resistance', unit: 'kΩ' },
  },
  compute({ first, second }) {
    return (first * second) / (first + second);
  },
  validity: ['Both resistances must be above zero.'],
  source: cite(PUBLICATIONS.circuitTheory, 'parallel resistances'),
  examples: [
    {
      source: workedWith('bc'),
      inputs: { first: '15 kΩ', second: '10 kΩ' },
      printed: '6.000 kΩ',
      kind: 'independent',
    },
  ],
});
