import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat in each of several equal parts side by side. */
export const parallelPartLoss = defineFormula({
  id: 'parallel-part-loss',
  title: 'Loss of one of several parts in parallel',
  subject: 'loss',
  meaning: 'Heat in each of several equal parts side by side.',
  expression: 'P_{1} = \\frac{I^{2} R}{n^{2}}',
  output: { tex: 'P_{1}', dimension: 'power', meaning: 'loss of one', unit: 'W' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'current, rms', unit: 'A' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
    count: { tex: 'n', dimension: 'ratio', meaning: 'number of parts', unit: '1' },
  },
  compute({ current, resistance, count }) {
    return (current ** 2 * resistance) / count ** 2;
  },
  validity: ['Equal parts at equal temperature.', 'MOSFETs share by themselves, diodes do not.'],
  source: cite(PUBLICATIONS.circuitTheory, 'equal resistances in parallel'),
  examples: [
    {
      source: workedWith('bc: 10 A through two of 8 mΩ'),
      inputs: { current: '10 A', resistance: '8 mΩ', count: '2' },
      printed: '0.200 W',
      kind: 'independent',
    },
  ],
});
