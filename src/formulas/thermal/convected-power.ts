import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat that a surface gives to air with a known coefficient, here taken for one square metre and kelvin. */
export const convectedPower = defineFormula({
  id: 'convected-power',
  title: 'Convected power',
  subject: 'thermal',
  meaning: 'Heat that a surface gives to air with a known coefficient, here taken for one square metre and kelvin.',
  expression: 'P = h\\,A\\,(T_{s} - T_{a})',
  output: { tex: 'P', dimension: 'power', meaning: 'convected power', unit: 'W' },
  inputs: {
    coefficient: { tex: 'h', dimension: 'heat flux', meaning: 'heat flux for one kelvin of difference', unit: 'W/m²' },
    area: { tex: 'A', dimension: 'area', meaning: 'surface', unit: 'cm²' },
    surface: { tex: 'T_{s}', dimension: 'temperature', meaning: 'surface temperature', unit: '°C' },
    ambient: { tex: 'T_{a}', dimension: 'temperature', meaning: 'air temperature', unit: '°C' },
  },
  compute({ coefficient, area, surface, ambient }) {
    return coefficient * area * (surface - ambient);
  },
  validity: ['The coefficient holds near the temperatures it was found at.'],
  source: cite(PUBLICATIONS.cengelTextbook, 'example 1.10'),
  examples: [
    {
      source: cite(PUBLICATIONS.cengelTextbook, 'example 1.10'),
      inputs: { coefficient: '6 W/m²', area: '1.6 m²', surface: '28.85 °C', ambient: '19.85 °C' },
      printed: '86.4 W',
      kind: 'published',
    },
  ],
});
