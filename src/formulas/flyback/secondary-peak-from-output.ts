import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Peak of a triangular secondary current that carries the output current. */
export const secondaryPeakFromOutput = defineFormula({
  id: 'secondary-peak-from-output',
  title: 'Peak secondary current from the output',
  subject: 'flyback',
  meaning: 'Peak of a triangular secondary current that carries the output current.',
  expression: '\\hat{I}_{s} = \\frac{2 I_{o}}{D_{s}}',
  output: { tex: '\\hat{I}_{s}', dimension: 'current', meaning: 'peak secondary current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    share: { tex: 'D_{s}', dimension: 'ratio', meaning: 'share of the period in which it flows', unit: '1' },
  },
  compute({ current, share }) {
    return (2 * current) / share;
  },
  validity: ['Discontinuous conduction or its boundary.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-16'),
      inputs: { current: '12 A', share: '0.517' },
      printed: '46.4 A',
      kind: 'published',
    },
  ],
});
