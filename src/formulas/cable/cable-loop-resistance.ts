import { defineFormula } from '../../values/define-formula.ts';
import { CABLE_DROP_DATA } from '../publications.ts';

/** Resistance that a cable adds, there and back, at 20 °C. */
export const cableLoopResistance = defineFormula({
  id: 'cable-loop-resistance',
  title: 'Resistance of a cable, there and back',
  subject: 'cable',
  meaning: 'Resistance that the two conductors of a cable add, there and back, at 20 °C.',
  expression: 'R = \\frac{2\\,l \\cdot 1.724\\cdot10^{-8}\\,\\Omega\\mathrm{m}}{A}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance of both conductors', unit: 'mΩ' },
  inputs: {
    length: { tex: 'l', dimension: 'length', meaning: 'length of the cable', unit: 'm' },
    area: { tex: 'A', dimension: 'area', meaning: 'cross-section of each conductor', unit: 'mm²' },
  },
  compute({ length, area }) {
    return (2 * length * 1.724e-8) / area;
  },
  validity: ['Copper at 20 °C, both conductors alike; contacts and a warm cable add to it.'],
  source: { ...CABLE_DROP_DATA, section: 'resistance per metre, taken twice' },
  examples: [
    {
      source: { ...CABLE_DROP_DATA, section: 'AWG 20 (0.5176 mm²), 1 m, there and back' },
      inputs: { length: '1 m', area: '0.5176 mm²' },
      printed: '0.0666 Ω',
      kind: 'published',
    },
  ],
});
