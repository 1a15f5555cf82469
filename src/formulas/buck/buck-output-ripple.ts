import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Ripple from the capacitance and the series resistance of the output capacitor. */
export const buckOutputRipple = defineFormula({
  id: 'buck-output-ripple',
  title: 'Output ripple of a buck',
  subject: 'buck',
  meaning: 'Ripple from the capacitance and the series resistance of the output capacitor.',
  expression: '\\Delta V = \\Delta I\\,R_{C} + \\frac{\\Delta I}{8 f\\,C}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'mV' },
  inputs: {
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
    resistance: { tex: 'R_{C}', dimension: 'resistance', meaning: 'series resistance of the output capacitor', unit: 'mΩ' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'output capacitance', unit: 'µF' },
  },
  compute({ ripple, resistance, frequency, capacitance }) {
    return ripple * resistance + ripple / (8 * frequency * capacitance);
  },
  validity: ['The two parts peak at different moments; their sum is an upper bound.'],
  remarks: ['SLUS719E leaves out the 8 and so finds 24 mV where the capacitance alone gives 3.0 mV.'],
  source: workedWith('integration of the triangle'),
  examples: [
    {
      source: workedWith('numerical integration of the triangle'),
      inputs: { ripple: '2.6 A', resistance: '0 mΩ', frequency: '600 kHz', capacitance: '178 µF' },
      printed: '3.043 mV',
      kind: 'independent',
    },
  ],
});
