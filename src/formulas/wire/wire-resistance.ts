import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Resistance of a copper wire or track at a temperature. */
export const wireResistance = defineFormula({
  id: 'wire-resistance',
  title: 'Resistance of a copper conductor',
  subject: 'wire',
  meaning: 'Resistance of a copper wire or track at a temperature.',
  expression: 'R = \\frac{1.724\\cdot10^{-8}\\,\\Omega\\mathrm{m}\\;(1 + 0.00393\\,(T - 20))\\;l}{A}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'mΩ' },
  inputs: {
    temperature: { tex: 'T', dimension: 'temperature', meaning: 'temperature', unit: '°C' },
    length: { tex: 'l', dimension: 'length', meaning: 'length of the conductor, both ways', unit: 'm' },
    area: { tex: 'A', dimension: 'area', meaning: 'cross-section', unit: 'mm²' },
  },
  compute({ temperature, length, area }) {
    return (1.724e-8 * (1 + 0.00393 * (temperature - 20)) * length) / area;
  },
  validity: ['Direct current; skin effect comes on top.'],
  remarks: ['AN-1024a reckons with 2.30 µΩ·cm at 100 °C, 1.5 % more than this coefficient gives.'],
  source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'section 6; temperature coefficient of annealed copper from memory'),
  examples: [
    {
      source: workedWith('bc: AWG 20'),
      inputs: { temperature: '20 °C', length: '1 m', area: '0.5188 mm²' },
      printed: '33.23 mΩ',
      kind: 'independent',
    },
    {
      source: workedWith('bc: AWG 30'),
      inputs: { temperature: '20 °C', length: '1 m', area: '0.05067 mm²' },
      printed: '340.2 mΩ',
      kind: 'independent',
    },
  ],
});
