import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance that carries the output while the switch is on. */
export const flybackOutputCapacitance = defineFormula({
  id: 'flyback-output-capacitance',
  title: 'Output capacitance of a flyback',
  subject: 'flyback',
  meaning: 'Capacitance that carries the output while the switch is on.',
  expression: 'C_{o} = \\frac{I_{o}\\,D}{\\Delta V\\,f}',
  output: { tex: 'C_{o}', dimension: 'capacitance', meaning: 'output capacitance', unit: 'µF' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'mV' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ current, duty, ripple, frequency }) {
    return (current * duty) / (ripple * frequency);
  },
  validity: ['The series resistance is left out.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.4, eq. 21'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.4, eq. 21: 0.1 % of 12 V'),
      inputs: { current: '4 A', duty: '0.615385', ripple: '12 mV', frequency: '110 kHz' },
      printed: '1865 µF',
      kind: 'published',
    },
  ],
});
