import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage that a meter shows between the output and earth, with the Y capacitor in series with it: a divider, and no measure of danger. */
export const meterOnYCapacitor = defineFormula({
  id: 'meter-on-y-capacitor',
  title: 'A meter on a Y capacitor',
  subject: 'capacitor',
  meaning:
    'Voltage that a meter shows between the output and earth, with the Y capacitor in series with it: a divider, and no measure of danger.',
  expression: 'V_{m} = V\\,\\frac{R}{\\sqrt{R^{2} + \\left(2\\pi f C\\right)^{-2}}}',
  output: { tex: 'V_{m}', dimension: 'voltage', meaning: 'reading of the meter, rms', unit: 'V' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'line frequency', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance from mains to output', unit: 'nF' },
    meter: { tex: 'R', dimension: 'resistance', meaning: 'input resistance of the meter', unit: 'MΩ' },
  },
  compute({ voltage, frequency, capacitance, meter }) {
    return (voltage * meter) / Math.hypot(meter, 1 / (2 * Math.PI * frequency * capacitance));
  },
  validity: [
    'The most there can be: the capacitor tied to the live pole. Tied to the rectified bus it follows one pole in each half cycle, and about half is read.',
    'The capacitance of meter and leads is left out.',
  ],
  source: { title: 'Elementary circuit theory', section: 'capacitor and resistor in series', standing: 'common practice' },
  examples: [
    {
      source: workedWith('Python: 230 V, 50 Hz, 2.2 nF into 10 MΩ'),
      inputs: { voltage: '230 V', frequency: '50 Hz', capacitance: '2.2 nF', meter: '10 MΩ' },
      printed: '227.6 V',
      kind: 'independent',
    },
  ],
});
