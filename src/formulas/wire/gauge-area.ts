import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Cross-section of an American wire gauge. */
export const gaugeArea = defineFormula({
  id: 'gauge-area',
  title: 'Area of a wire gauge',
  subject: 'wire',
  meaning: 'Cross-section of an American wire gauge.',
  expression: 'A = \\frac{\\pi}{4}\\left(0.127\\,\\mathrm{mm}\\cdot 92^{(36 - n)/39}\\right)^{2}',
  output: { tex: 'A', dimension: 'area', meaning: 'cross-section', unit: 'mm²' },
  inputs: {
    gauge: { tex: 'n', dimension: 'ratio', meaning: 'gauge number', unit: '1' },
  },
  compute({ gauge }) {
    return (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - gauge) / 39)) ** 2;
  },
  validity: ['Solid wire; strands are a little larger for the same number.'],
  source: { title: 'American wire gauge', section: 'definition: 39 steps from 0.005 in to 0.46 in', standing: 'common practice' },
  examples: [
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 24'),
      inputs: { gauge: '24' },
      printed: '0.2047 mm²',
      kind: 'published',
      allowance: { fraction: 0.0005, reason: 'the table goes by circular mils rounded to four digits' },
    },
    { source: workedWith('bc'), inputs: { gauge: '20' }, printed: '0.5176 mm²', kind: 'independent' },
  ],
});
