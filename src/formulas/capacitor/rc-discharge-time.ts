import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Time that a capacitor takes to fall from one voltage to a lower one through a resistor; nought where it starts below. */
export const rcDischargeTime = defineFormula({
  id: 'rc-discharge-time',
  title: 'Discharge time through a resistor',
  subject: 'capacitor',
  meaning: 'Time that a capacitor takes to fall from one voltage to a lower one through a resistor; nought where it starts below.',
  expression: 't = R\\,C\\,\\ln\\frac{V_{0}}{V}',
  output: { tex: 't', dimension: 'time', meaning: 'time to the end voltage', unit: 's' },
  inputs: {
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance across the capacitor', unit: 'MΩ' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
    start: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage at the start', unit: 'V' },
    end: { tex: 'V', dimension: 'voltage', meaning: 'voltage to reach', unit: 'V' },
  },
  compute({ resistance, capacitance, start, end }) {
    return start <= end ? 0 : resistance * capacitance * Math.log(start / end);
  },
  validity: ['Supply disconnected, no other load, resistance constant.', 'The end voltage must be above zero.'],
  source: cite(PUBLICATIONS.birdTextbook, 'chapter 17'),
  examples: [
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 5, p. 267'),
      inputs: { resistance: '50 kΩ', capacitance: '16.0 µF', start: '100 V', end: '20 V' },
      printed: '1.29 s',
      kind: 'published',
    },
    {
      source: workedWith('Python: a 10 MΩ meter across 82 µF'),
      inputs: { resistance: '10 MΩ', capacitance: '82 µF', start: '373.4 V', end: '60 V' },
      printed: '1499 s',
      kind: 'independent',
    },
    {
      source: workedWith('Python: 2.2 kΩ across 82 µF'),
      inputs: { resistance: '2.2 kΩ', capacitance: '82 µF', start: '373.4 V', end: '60 V' },
      printed: '0.33 s',
      kind: 'independent',
    },
  ],
});
