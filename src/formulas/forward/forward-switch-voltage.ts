import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Voltage of the switch of a forward converter with a reset winding. */
export const forwardSwitchVoltage = defineFormula({
  id: 'forward-switch-voltage',
  title: 'Switch voltage of a forward converter',
  subject: 'forward',
  meaning: 'Voltage of the switch of a forward converter with a reset winding.',
  expression: 'V_{DS} = V_{\\mathrm{in}}\\left(1 + \\frac{N_{p}}{N_{r}}\\right)',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'highest bulk voltage', unit: 'V' },
    resetRatio: { tex: '\\frac{N_{p}}{N_{r}}', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' },
  },
  compute({ input, resetRatio }) {
    return input * (1 + resetRatio);
  },
  validity: ['The spike of the leakage comes on top.', 'With two switches and two diodes each switch sees the input voltage alone.'],
  remarks: ['The textbook adds half of the bus for the spike: 813.2 V and 162.6 V are its 975.8 V; here the spike is a value of its own.'],
  source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8'),
  examples: [
    {
      source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8, p. 1015: 975.80 V less its spike of 162.63 V'),
      inputs: { input: '325.27 V', resetRatio: '1.5' },
      printed: '813.17 V',
      kind: 'published',
      allowance: { fraction: 1e-5, reason: 'the bus of 230 √2 V is rounded to five digits here' },
    },
    {
      source: workedWith('bc: 375 V, reset winding of equal turns'),
      inputs: { input: '375 V', resetRatio: '1' },
      printed: '750.0 V',
      kind: 'independent',
    },
  ],
});
