import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Time for which a bulk capacitor alone carries the load, from its charged voltage down to the lowest that the converter can use. */
export const holdUpTime = defineFormula({
  id: 'hold-up-time',
  title: 'Hold-up time',
  subject: 'bulk',
  meaning:
    'Time for which a bulk capacitor alone carries the load, from its charged voltage down to the lowest that the converter can use.',
  expression: 't = \\frac{C\\,(V_{1}^{2} - V_{2}^{2})}{2\\,P_{\\mathrm{in}}}',
  output: { tex: 't', dimension: 'time', meaning: 'hold-up time', unit: 'ms' },
  inputs: {
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
    start: { tex: 'V_{1}', dimension: 'voltage', meaning: 'voltage at the moment the supply fails', unit: 'V' },
    end: { tex: 'V_{2}', dimension: 'voltage', meaning: 'lowest voltage the converter can use', unit: 'V' },
    power: {
      tex: 'P_{\\mathrm{in}}',
      dimension: 'power',
      meaning: 'power drawn from the capacitor: output power over efficiency',
      unit: 'W',
    },
  },
  compute({ capacitance, start, end, power }) {
    return start > end ? (capacitance * (start ** 2 - end ** 2)) / (2 * power) : Number.NaN;
  },
  validity: ['The start voltage must be above the end voltage.', 'The power drawn is constant.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 12, solved for the time'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'p. 8, design example step 1: 20 ms leaves 349 V'),
      inputs: { capacitance: '220 µF', start: '400 V', end: '349 V', power: '209 W' },
      printed: '20 ms',
      kind: 'published',
    },
  ],
});
