import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Time in which a capacitor loses 63 % of its voltage through a resistor. */
export const rcTimeConstant = defineFormula({
  id: 'rc-time-constant',
  title: 'Time constant',
  subject: 'capacitor',
  meaning: 'Time in which a capacitor loses 63 % of its voltage through a resistor.',
  expression: '\\tau = R\\,C',
  output: { tex: '\\tau', dimension: 'time', meaning: 'time constant', unit: 's' },
  inputs: {
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'kΩ' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  },
  compute({ resistance, capacitance }) {
    return resistance * capacitance;
  },
  validity: ['Supply disconnected, no other load.'],
  remarks: [
    'The printed 0.16 s of that textbook example is 0.165 s cut off.',
    'A rule of one time constant and a rule of 60 V are different tests: 0.47 µF with 1.5 MΩ meets the first and has 91 V left after 1 s from 375 V.',
  ],
  source: cite(PUBLICATIONS.robertsonTextbook, 'example 8.2, p. 255'),
  examples: [
    {
      source: workedWith('bc, from example 8.2 of Robertson, which prints 0.16 s'),
      inputs: { resistance: '330 kΩ', capacitance: '0.5 µF' },
      printed: '0.165 s',
      kind: 'independent',
    },
    {
      source: workedWith('bc, from the parts of AN-4137: 1.5 MΩ and 0.47 µF'),
      inputs: { resistance: '1.5 MΩ', capacitance: '0.47 µF' },
      printed: '0.705 s',
      kind: 'independent',
    },
    {
      source: cite(PUBLICATIONS.birdTextbook, 'example 5, p. 267, solved for the time'),
      inputs: { resistance: '50 kΩ', capacitance: '16.0 µF' },
      printed: '0.8 s',
      kind: 'published',
    },
  ],
});
