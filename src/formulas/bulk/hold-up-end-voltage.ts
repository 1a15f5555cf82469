import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Voltage to which a bulk capacitor falls while it alone carries the load for a given time. */
export const holdUpEndVoltage = defineFormula({
  id: 'hold-up-end-voltage',
  title: 'Bulk voltage after a hold-up time',
  subject: 'bulk',
  meaning: 'Voltage to which a bulk capacitor falls while it alone carries the load for a given time.',
  expression: 'V_{2} = \\sqrt{V_{1}^{2} - \\frac{2\\,P_{\\mathrm{in}}\\,t}{C}}',
  output: { tex: 'V_{2}', dimension: 'voltage', meaning: 'voltage at the end', unit: 'V' },
  inputs: {
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
    start: { tex: 'V_{1}', dimension: 'voltage', meaning: 'voltage at the moment the supply fails', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the capacitor', unit: 'W' },
    time: { tex: 't', dimension: 'time', meaning: 'time without supply', unit: 'ms' },
  },
  compute({ capacitance, start, power, time }) {
    return Math.sqrt(start ** 2 - (2 * power * time) / capacitance);
  },
  validity: ['The capacitor must hold the energy drawn; otherwise it is empty before the time is over.', 'The power drawn is constant.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'p. 8, design example step 1'),
      inputs: { capacitance: '220 µF', start: '400 V', power: '208.696 W', time: '20 ms' },
      printed: '349 V',
      kind: 'published',
    },
  ],
});
