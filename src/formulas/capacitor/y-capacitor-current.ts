import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Current at line frequency that a capacitor across the barrier passes to the output: the source of the tingle. */
export const yCapacitorCurrent = defineFormula({
  id: 'y-capacitor-current',
  title: 'Current through a Y capacitor',
  subject: 'capacitor',
  meaning: 'Current at line frequency that a capacitor across the barrier passes to the output: the source of the tingle.',
  expression: 'I = 2\\pi f\\,C\\,V',
  output: { tex: 'I', dimension: 'current', meaning: 'current, rms', unit: 'µA' },
  inputs: {
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'line frequency', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance from mains to output', unit: 'nF' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
  },
  compute({ frequency, capacitance, voltage }) {
    return 2 * Math.PI * frequency * capacitance * voltage;
  },
  validity: ['Upper bound: the impedance of the body is left out.', 'An indication, never a touch-current test.'],
  source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 29'),
  examples: [
    {
      source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 29 and 30, example; 5.6 nF and, through 2.4 µF, another 5.6 nF'),
      inputs: { frequency: '50 Hz', capacitance: '11.18696 nF', voltage: '253 V' },
      printed: '0.889 mA',
      kind: 'published',
    },
    {
      source: workedWith('Python: 2.2 nF at 264 V 60 Hz'),
      inputs: { frequency: '60 Hz', capacitance: '2.2 nF', voltage: '264 V' },
      printed: '0.219 mA',
      kind: 'independent',
    },
    {
      source: workedWith('Python: 4.7 nF at 264 V 60 Hz'),
      inputs: { frequency: '60 Hz', capacitance: '4.7 nF', voltage: '264 V' },
      printed: '0.468 mA',
      kind: 'independent',
    },
  ],
});
