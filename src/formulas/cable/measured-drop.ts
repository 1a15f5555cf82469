import { defineFormula } from '../../values/define-formula.ts';
import { CABLE_DROP_DATA } from '../publications.ts';

/** Voltage between a port and the end of its cable, from a reading at each. */
export const measuredDrop = defineFormula({
  id: 'measured-drop',
  title: 'Voltage lost between port and cable end',
  subject: 'cable',
  meaning: 'Voltage between a port and the end of its cable, from a reading at each.',
  expression: '\\Delta V = V_{1} - V_{2}',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'voltage lost on the way, there and back', unit: 'V' },
  inputs: {
    near: { tex: 'V_{1}', dimension: 'voltage', meaning: 'voltage at the port', unit: 'V' },
    far: { tex: 'V_{2}', dimension: 'voltage', meaning: 'voltage at the end of the cable', unit: 'V' },
  },
  compute({ near, far }) {
    return near - far;
  },
  validity: ['Both at the same current and setting.'],
  remarks: ['The difference of two close voltages: two readings good to 0.1 % of 20 V leave 0.04 V of doubt on it.'],
  source: { ...CABLE_DROP_DATA, section: 'voltage drop' },
  examples: [
    {
      source: { ...CABLE_DROP_DATA, section: 'AWG 20, 1 m, 5 A: 0.333 V of 20 V' },
      inputs: { near: '20.000 V', far: '19.667 V' },
      printed: '0.333 V',
      kind: 'published',
    },
  ],
});
