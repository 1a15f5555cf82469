import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Capacitance of two capacitors side by side; folded over any number. */
export const parallelCapacitance = defineFormula({
  id: 'parallel-capacitance',
  title: 'Capacitors in parallel',
  subject: 'capacitor',
  meaning: 'Capacitance of two capacitors side by side; folded over any number.',
  expression: 'C = C_{1} + C_{2}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance of both', unit: 'µF' },
  inputs: {
    first: { tex: 'C_{1}', dimension: 'capacitance', meaning: 'first capacitance', unit: 'µF' },
    second: { tex: 'C_{2}', dimension: 'capacitance', meaning: 'second capacitance', unit: 'µF' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: [],
  source: cite(PUBLICATIONS.circuitTheory, 'parallel capacitances'),
  examples: [
    {
      source: workedWith('bc'),
      inputs: { first: '68 µF', second: '47 µF' },
      printed: '115 µF',
      kind: 'independent',
    },
  ],
});
