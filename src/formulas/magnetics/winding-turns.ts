import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Least number of turns that keeps a core below a flux density at a peak current. */
export const windingTurns = defineFormula({
  id: 'winding-turns',
  title: 'Turns for a flux density',
  subject: 'magnetics',
  meaning: 'Least number of turns that keeps a core below a flux density at a peak current.',
  expression: 'N = \\frac{L\\,\\hat{I}}{B\\,A_{e}}',
  output: { tex: 'N', dimension: 'ratio', meaning: 'turns', unit: '1' },
  inputs: {
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    current: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
    flux: { tex: 'B', dimension: 'flux density', meaning: 'flux density', unit: 'mT' },
    area: { tex: 'A_{e}', dimension: 'area', meaning: 'effective area of the core', unit: 'mm²' },
  },
  compute({ inductance, current, flux, area }) {
    return (inductance * current) / (flux * area);
  },
  validity: ['The peak current is that of the current limit.'],
  source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 12'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 12'),
      inputs: { inductance: '40 µH', current: '3.49 A', flux: '80 mT', area: '90 mm²' },
      printed: '19.4',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 18'),
      inputs: { inductance: '202 µH', current: '7 A', flux: '300 mT', area: '161 mm²' },
      printed: '29',
      kind: 'published',
    },
  ],
});
