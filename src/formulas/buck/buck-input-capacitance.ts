import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Capacitance that holds the ripple of the input. */
export const buckInputCapacitance = defineFormula({
  id: 'buck-input-capacitance',
  title: 'Input capacitance of a buck',
  subject: 'buck',
  meaning: 'Capacitance that holds the ripple of the input.',
  expression: 'C = \\frac{I_{o}\\,V_{o}}{\\Delta V\\,V_{i}\\,f}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'input capacitance', unit: 'µF' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ current, output, ripple, input, frequency }) {
    return (current * output) / (ripple * input * frequency);
  },
  validity: ['Upper bound: the factor 1 − D is left out.'],
  source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 15'),
  examples: [
    {
      source: workedWith('bc: 10 A, 1.8 V, 0.4 V, 8 V, 600 kHz'),
      inputs: { current: '10 A', output: '1.8 V', ripple: '0.4 V', input: '8 V', frequency: '600 kHz' },
      printed: '9.375 µF',
      kind: 'independent',
    },
  ],
});
