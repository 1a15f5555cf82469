import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance that carries the load for a given time between two voltages. */
export const holdUpCapacitance = defineFormula({
  id: 'hold-up-capacitance',
  title: 'Bulk capacitance for a hold-up time',
  subject: 'bulk',
  meaning: 'Capacitance that carries the load for a given time between two voltages.',
  expression: 'C = \\frac{2\\,P_{\\mathrm{in}}\\,t}{V_{1}^{2} - V_{2}^{2}}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
  inputs: {
    power: {
      tex: 'P_{\\mathrm{in}}',
      dimension: 'power',
      meaning: 'power drawn from the capacitor: output power over efficiency',
      unit: 'W',
    },
    time: { tex: 't', dimension: 'time', meaning: 'hold-up time', unit: 'ms' },
    start: { tex: 'V_{1}', dimension: 'voltage', meaning: 'voltage at the moment the supply fails', unit: 'V' },
    end: { tex: 'V_{2}', dimension: 'voltage', meaning: 'lowest voltage the converter can use', unit: 'V' },
  },
  compute({ power, time, start, end }) {
    return start > end ? (2 * power * time) / (start ** 2 - end ** 2) : Number.NaN;
  },
  validity: ['The start voltage must be above the end voltage.', 'The power drawn is constant.'],
  remarks: ['Infineon DN 2013-01 prints 16.6 ms beside 900.9 µF; that is a whole cycle of 60 Hz, 16.667 ms. 16.6 ms ask for 897.3 µF.'],
  source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 21'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 21: 300 W at 92 %, one cycle of 47 Hz'),
      inputs: { power: '326.087 W', time: '21.2766 ms', start: '390 V', end: '240 V' },
      printed: '147 µF',
      kind: 'published',
    },
  ],
});
