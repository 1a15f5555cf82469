import { defineFormula } from '../../values/define-formula.ts';
import { CABLE_DROP_DATA } from '../publications.ts';

/** Resistance between two places, from the voltage lost and the current. */
export const resistanceOfDrop = defineFormula({
  id: 'resistance-of-drop',
  title: 'Resistance that a voltage drop implies',
  subject: 'cable',
  meaning: 'Resistance there and back between the port and the end of its cable, from the voltage lost on the way and the current.',
  expression: 'R = \\frac{\\Delta V}{I}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance there and back, contacts included', unit: 'mΩ' },
  inputs: {
    drop: { tex: '\\Delta V', dimension: 'voltage', meaning: 'voltage lost between the port and the end of the cable', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
  },
  compute({ drop, current }) {
    return drop / current;
  },
  validity: ['A steady current, the same at both places.'],
  remarks: ['Contacts are in it: a plug adds some tens of milliohms to what the wire has.'],
  source: { ...CABLE_DROP_DATA, section: 'resistance and voltage drop, turned round' },
  examples: [
    {
      source: { ...CABLE_DROP_DATA, section: 'AWG 20, 1 m, 3 A: 0.200 V and 66.6 mΩ' },
      inputs: { drop: '0.200 V', current: '3 A' },
      printed: '66.6 mΩ',
      kind: 'published',
      allowance: { fraction: 0.0015, reason: 'the drop is printed to three digits' },
    },
  ],
});
