import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Voltage left on a capacitor after some time of discharge through a resistor. */
export const rcVoltageAfter = defineFormula({
  id: 'rc-voltage-after',
  title: 'Voltage after a time through a resistor',
  subject: 'capacitor',
  meaning: 'Voltage left on a capacitor after some time of discharge through a resistor.',
  expression: 'V = V_{0}\\,e^{-t/(R\\,C)}',
  output: { tex: 'V', dimension: 'voltage', meaning: 'voltage left', unit: 'V' },
  inputs: {
    start: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage at the start', unit: 'V' },
    time: { tex: 't', dimension: 'time', meaning: 'time of discharge', unit: 's' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance across the capacitor', unit: 'MΩ' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ start, time, resistance, capacitance }) {
    return start * Math.exp(-time / (resistance * capacitance));
  },
  validity: ['Supply disconnected, no other load, resistance constant.'],
  source: cite(PUBLICATIONS.birdTextbook, 'chapter 17'),
  examples: [
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 2, p. 263'),
      inputs: { start: '24 V', time: '1.5 s', resistance: '220 kΩ', capacitance: '4 µF' },
      printed: '4.4 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 5, p. 267'),
      inputs: { start: '100 V', time: '1 s', resistance: '50 kΩ', capacitance: '16 µF' },
      printed: '28.7 V',
      kind: 'published',
    },
    {
      source: workedWith('Python: 0.47 µF with 2 MΩ'),
      inputs: { start: '373.4 V', time: '1 s', resistance: '2 MΩ', capacitance: '0.47 µF' },
      printed: '128.9 V',
      kind: 'independent',
    },
    {
      source: workedWith('Python: 100 µF with 10 kΩ, three time constants'),
      inputs: { start: '300 V', time: '3 s', resistance: '10 kΩ', capacitance: '100 µF' },
      printed: '14.9 V',
      kind: 'independent',
    },
    {
      source: cite(
        PUBLICATIONS.robertsonTextbook,
        'example 8.2, p. 255: after one time constant, a third of 150 V across the second resistor',
      ),
      inputs: { start: '50 V', time: '0.165 s', resistance: '330 kΩ', capacitance: '0.5 µF' },
      printed: '18.4 V',
      kind: 'published',
    },
  ],
});
