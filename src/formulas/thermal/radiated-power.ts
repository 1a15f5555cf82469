import { defineFormula } from '../../values/define-formula.ts';
import { blackBodyFlux } from '../black-body-flux.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat that a surface radiates to its surroundings. */
export const radiatedPower = defineFormula({
  id: 'radiated-power',
  title: 'Radiated power',
  subject: 'thermal',
  meaning: 'Heat that a surface radiates to its surroundings.',
  expression: 'P = \\varepsilon\\,\\sigma\\,A\\,(T_{s}^{4} - T_{a}^{4})',
  output: { tex: 'P', dimension: 'power', meaning: 'radiated power', unit: 'W' },
  inputs: {
    emissivity: { tex: '\\varepsilon', dimension: 'ratio', meaning: 'emissivity; about 0.9 for plastic', unit: '1' },
    area: { tex: 'A', dimension: 'area', meaning: 'surface', unit: 'cm²' },
    surface: { tex: 'T_{s}', dimension: 'temperature', meaning: 'surface temperature', unit: '°C' },
    surroundings: { tex: 'T_{a}', dimension: 'temperature', meaning: 'temperature of the surroundings', unit: '°C' },
  },
  compute({ emissivity, area, surface, surroundings }) {
    return emissivity * area * blackBodyFlux(surface, surroundings);
  },
  validity: ['Grey surface in large surroundings; temperatures count from absolute zero.'],
  source: cite(PUBLICATIONS.cengelTextbook, 'example 1.10'),
  examples: [
    {
      source: cite(PUBLICATIONS.cengelTextbook, 'example 1.10: 302 K and 293 K'),
      inputs: { emissivity: '0.95', area: '1.6 m²', surface: '28.85 °C', surroundings: '19.85 °C' },
      printed: '81.7 W',
      kind: 'published',
    },
  ],
});
