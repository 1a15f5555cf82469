import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Mean of the inductor current of a boost: the input current. */
export const boostInductorMean = defineFormula({
  id: 'boost-inductor-mean',
  title: 'Inductor current of a boost',
  subject: 'buck',
  meaning: 'Mean of the inductor current of a boost: the input current.',
  expression: 'I_{L} = \\frac{I_{o}\\,V_{o}}{V_{i}}',
  output: { tex: 'I_{L}', dimension: 'current', meaning: 'mean inductor current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
  },
  compute({ current, output, input }) {
    return (current * output) / input;
  },
  validity: ['Losses left out.'],
  source: cite(PUBLICATIONS.linearBuckBoost3789, 'p. 23'),
  examples: [
    {
      source: workedWith('bc: 5 A at 12 V from 6 V'),
      inputs: { current: '5 A', output: '12 V', input: '6 V' },
      printed: '10.00 A',
      kind: 'independent',
    },
  ],
});
