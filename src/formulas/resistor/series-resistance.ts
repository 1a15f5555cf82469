import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Resistance of two resistors one behind the other; folded over any number. */
export const seriesResistance = defineFormula({
  id: 'series-resistance',
  title: 'Resistors in series',
  subject: 'resistor',
  meaning: 'Resistance of two resistors one behind the other; folded over any number.',
  expression: 'R = R_{1} + R_{2}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance of both', unit: 'kΩ' },
  inputs: {
    first: { tex: 'R_{1}', dimension: 'resistance', meaning: 'first resistance', unit: 'kΩ' },
    second: { tex: 'R_{2}', dimension: 'resistance', meaning: 'second resistance', unit: 'kΩ' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: [],
  source: cite(PUBLICATIONS.circuitTheory, 'series resistances'),
  examples: [
    {
      source: workedWith('bc'),
      inputs: { first: '220 kΩ', second: '110 kΩ' },
      printed: '330 kΩ',
      kind: 'independent',
    },
  ],
});
