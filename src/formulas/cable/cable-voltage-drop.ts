import { defineFormula } from '../../values/define-formula.ts';
import { CABLE_DROP_DATA } from '../publications.ts';

/** Voltage that a cable takes from what the port gives. */
export const cableVoltageDrop = defineFormula({
  id: 'cable-voltage-drop',
  title: 'Voltage drop of a cable',
  subject: 'cable',
  meaning: 'Voltage that a cable takes from what the port gives, at a current.',
  expression: '\\Delta V = R\\,I',
  output: { tex: '\\Delta V', dimension: 'voltage', meaning: 'voltage lost in the cable', unit: 'V' },
  inputs: {
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'resistance of both conductors', unit: 'mΩ' },
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
  },
  compute({ resistance, current }) {
    return resistance * current;
  },
  validity: ['A steady current.'],
  source: { ...CABLE_DROP_DATA, section: 'voltage drop' },
  examples: [
    {
      source: { ...CABLE_DROP_DATA, section: 'AWG 20, 1 m, 3 A' },
      inputs: { resistance: '0.0666 Ω', current: '3 A' },
      printed: '0.200 V',
      kind: 'published',
    },
    {
      source: { ...CABLE_DROP_DATA, section: 'AWG 20, 1 m, 5 A' },
      inputs: { resistance: '0.0666 Ω', current: '5 A' },
      printed: '0.333 V',
      kind: 'published',
    },
  ],
});
