import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Flux density in a core at a peak current: ferrites saturate from about 0.35 T hot. */
export const peakFluxDensity = defineFormula({
  id: 'peak-flux-density',
  title: 'Peak flux density',
  subject: 'magnetics',
  meaning: 'Flux density in a core at a peak current: ferrites saturate from about 0.35 T hot.',
  expression: 'B = \\frac{L\\,\\hat{I}}{N\\,A_{e}}',
  output: { tex: 'B', dimension: 'flux density', meaning: 'flux density', unit: 'T' },
  inputs: {
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    current: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
    turns: { tex: 'N', dimension: 'ratio', meaning: 'turns', unit: '1' },
    area: { tex: 'A_{e}', dimension: 'area', meaning: 'effective area of the core', unit: 'mm²' },
  },
  compute({ inductance, current, turns, area }) {
    return (inductance * current) / (turns * area);
  },
  validity: ['Inductance that does not fall with the current.'],
  source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 20'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 20: 7 A, 20 % above'),
      inputs: { inductance: '202 µH', current: '8.4 A', turns: '30', area: '161 mm²' },
      printed: '0.35 T',
      kind: 'published',
    },
    {
      source: workedWith('Python'),
      inputs: { inductance: '202 µH', current: '8.4 A', turns: '30', area: '161 mm²' },
      printed: '0.3513 T',
      kind: 'independent',
    },
  ],
});
