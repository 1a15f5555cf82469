import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Resistance of several equal parts side by side. */
export const parallelPartsResistance = defineFormula({
  id: 'parallel-parts-resistance',
  title: 'Resistance of equal parts in parallel',
  subject: 'loss',
  meaning: 'Resistance of several equal parts side by side.',
  expression: 'R_{n} = \\frac{R}{n}',
  output: { tex: 'R_{n}', dimension: 'resistance', meaning: 'resistance together', unit: 'mΩ' },
  inputs: {
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
    count: { tex: 'n', dimension: 'ratio', meaning: 'number of parts', unit: '1' },
  },
  compute({ resistance, count }) {
    return resistance / count;
  },
  validity: ['Equal parts at equal temperature.', 'MOSFETs share by themselves, diodes do not.'],
  source: cite(PUBLICATIONS.circuitTheory, 'equal resistances in parallel'),
  examples: [
    { source: workedWith('bc: two of 8 mΩ'), inputs: { resistance: '8 mΩ', count: '2' }, printed: '4.00 mΩ', kind: 'independent' },
  ],
});
