import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Loss over the surface that gives it off. */
export const heatFlux = defineFormula({
  id: 'heat-flux',
  title: 'Heat flux',
  subject: 'thermal',
  meaning: 'Loss over the surface that gives it off.',
  expression: 'q = \\frac{P}{A}',
  output: { tex: 'q', dimension: 'heat flux', meaning: 'heat flux', unit: 'W/m²' },
  inputs: {
    loss: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
    area: { tex: 'A', dimension: 'area', meaning: 'surface', unit: 'cm²' },
  },
  compute({ loss, area }) {
    return loss / area;
  },
  validity: ['The whole surface gives off heat alike.'],
  source: cite(PUBLICATIONS.enclosureHeatGuide, 'worked example'),
  examples: [
    {
      source: cite(PUBLICATIONS.enclosureHeatGuide, 'worked example, 42 square feet'),
      inputs: { loss: '300 W', area: '42 ft²' },
      printed: '7.1 W/ft²',
      kind: 'published',
    },
    { source: workedWith('bc'), inputs: { loss: '5 W', area: '144 cm²' }, printed: '347.2 W/m²', kind: 'independent' },
  ],
});
