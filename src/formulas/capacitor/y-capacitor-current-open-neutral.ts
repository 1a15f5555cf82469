import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Current at line frequency when the neutral is open and both Y capacitors lead to the output, the second through the X capacitor. */
export const yCapacitorCurrentOpenNeutral = defineFormula({
  id: 'y-capacitor-current-open-neutral',
  title: 'Current through two Y capacitors with the neutral open',
  subject: 'capacitor',
  meaning:
    'Current at line frequency when the neutral is open and both Y capacitors lead to the output, the second through the X capacitor.',
  expression: 'I = 2\\pi f\\,V\\left(C_{1} + \\frac{C_{X} C_{2}}{C_{X} + C_{2}}\\right)',
  output: { tex: 'I', dimension: 'current', meaning: 'current, rms', unit: 'µA' },
  inputs: {
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'line frequency', unit: 'Hz' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
    line: { tex: 'C_{1}', dimension: 'capacitance', meaning: 'Y capacitor at the line', unit: 'nF' },
    neutral: { tex: 'C_{2}', dimension: 'capacitance', meaning: 'Y capacitor at the neutral', unit: 'nF' },
    across: { tex: 'C_{X}', dimension: 'capacitance', meaning: 'X capacitor', unit: 'µF' },
  },
  compute({ frequency, voltage, line, neutral, across }) {
    return 2 * Math.PI * frequency * voltage * (line + (across * neutral) / (across + neutral));
  },
  validity: ['Upper bound: the impedance of the body is left out.', 'An indication, never a touch-current test.'],
  remarks: ['With the neutral closed one Y capacitor counts, which gives half; both views stand beside each other.'],
  source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 29 and 30'),
  examples: [
    {
      source: cite(PUBLICATIONS.wuerthLineFilter, 'eq. 29 and 30, example'),
      inputs: { frequency: '50 Hz', voltage: '253 V', line: '5.6 nF', neutral: '5.6 nF', across: '2.4 µF' },
      printed: '0.889 mA',
      kind: 'published',
    },
  ],
});
