import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Largest resistance that brings a capacitor down to a given voltage within a given time. */
export const largestDischargeResistance = defineFormula({
  id: 'largest-discharge-resistance',
  title: 'Largest discharge resistance',
  subject: 'capacitor',
  meaning: 'Largest resistance that brings a capacitor down to a given voltage within a given time.',
  expression: 'R_{\\max} = \\frac{t}{C\\,\\ln(V_{0}/V)}',
  output: { tex: 'R_{\\max}', dimension: 'resistance', meaning: 'largest resistance', unit: 'MΩ' },
  inputs: {
    time: { tex: 't', dimension: 'time', meaning: 'time allowed', unit: 's' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
    start: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage at the start', unit: 'V' },
    end: { tex: 'V', dimension: 'voltage', meaning: 'voltage to reach', unit: 'V' },
  },
  compute({ time, capacitance, start, end }) {
    return start > end ? time / (capacitance * Math.log(start / end)) : Number.NaN;
  },
  validity: ['The start voltage must be above the end voltage.', 'Which rule sets time and voltage must stand beside the result.'],
  remarks: [
    'ANP015 as restated finds 256 kΩ for 2.52 µF from 283 V, no crest of the mains it names; from the crest of 253 V it is 222 kΩ.',
  ],
  source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 34'),
  examples: [
    {
      source: workedWith('Python: 0.47 µF from the crest of 264 V to 60 V in 2 s'),
      inputs: { time: '2 s', capacitance: '0.47 µF', start: '373.3524 V', end: '60 V' },
      printed: '2.3276 MΩ',
      kind: 'independent',
    },
    {
      source: workedWith('bc: 2.52 µF of ANP015 from the crest of 253 V to 60 V in 1 s'),
      inputs: { time: '1 s', capacitance: '2.52 µF', start: '357.796 V', end: '60 V' },
      printed: '222.2 kΩ',
      kind: 'independent',
    },
  ],
});
