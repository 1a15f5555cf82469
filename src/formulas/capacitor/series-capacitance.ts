import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Capacitance of two capacitors one behind the other; folded over any number. */
export const seriesCapacitance = defineFormula({
  id: 'series-capacitance',
  title: 'Capacitors in series',
  subject: 'capacitor',
  meaning: 'Capacitance of two capacitors one behind the other; folded over any number.',
  expression: 'C = \\frac{C_{1}\\,C_{2}}{C_{1} + C_{2}}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance of both', unit: 'nF' },
  inputs: {
    first: { tex: 'C_{1}', dimension: 'capacitance', meaning: 'first capacitance', unit: 'nF' },
    second: { tex: 'C_{2}', dimension: 'capacitance', meaning: 'second capacitance', unit: 'nF' },
  },
  compute({ first, second }) {
    return (first * second) / (first + second);
  },
  validity: ['Both capacitances must be above zero.'],
  source: cite(PUBLICATIONS.circuitTheory, 'series capacitances'),
  examples: [
    {
      source: workedWith('bc'),
      inputs: { first: '2400 nF', second: '5.6 nF' },
      printed: '5.58696 nF',
      kind: 'independent',
    },
  ],
});
