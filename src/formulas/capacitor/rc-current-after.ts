import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Current of a capacitor that discharges through a resistor, after some time. */
export const rcCurrentAfter = defineFormula({
  id: 'rc-current-after',
  title: 'Current after a time through a resistor',
  subject: 'capacitor',
  meaning: 'Current of a capacitor that discharges through a resistor, after some time.',
  expression: 'I = \\frac{V_{0}}{R}\\,e^{-t/(R\\,C)}',
  output: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'mA' },
  inputs: {
    start: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage at the start', unit: 'V' },
    time: { tex: 't', dimension: 'time', meaning: 'time of discharge', unit: 's' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'kΩ' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ start, time, resistance, capacitance }) {
    return (start / resistance) * Math.exp(-time / (resistance * capacitance));
  },
  validity: ['Supply disconnected, no other load.'],
  source: cite(PUBLICATIONS.birdTextbook, 'chapter 17'),
  examples: [
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 5, p. 267'),
      inputs: { start: '100 V', time: '0.5 s', resistance: '50 kΩ', capacitance: '16 µF' },
      printed: '1.07 mA',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 2, p. 263'),
      inputs: { start: '24 V', time: '1.5 s', resistance: '220 kΩ', capacitance: '4 µF' },
      printed: '0.02 mA',
      kind: 'published',
    },
  ],
});
