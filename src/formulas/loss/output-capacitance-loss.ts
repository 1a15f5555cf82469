import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat from the energy of the output capacitance at turn-on. */
export const outputCapacitanceLoss = defineFormula({
  id: 'output-capacitance-loss',
  title: 'Loss of the output capacitance',
  subject: 'loss',
  meaning: 'Heat from the energy of the output capacitance at turn-on.',
  expression: 'P = \\tfrac{1}{2}\\,C\\,V^{2} f',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'energy-related output capacitance', unit: 'pF' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage at turn-on', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ capacitance, voltage, frequency }) {
    return 0.5 * capacitance * voltage ** 2 * frequency;
  },
  validity: ['Hard switching; nothing with zero-voltage turn-on.'],
  source: cite(PUBLICATIONS.rohmBuckLosses, 'output capacitance'),
  examples: [
    {
      source: cite(PUBLICATIONS.rohmBuckLosses, 'both switches together'),
      inputs: { capacitance: '160 pF', voltage: '12 V', frequency: '1 MHz' },
      printed: '11.5 mW',
      kind: 'published',
    },
  ],
});
