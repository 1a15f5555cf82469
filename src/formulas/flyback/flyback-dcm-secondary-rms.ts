import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of a triangular secondary current from its peak and the output current. */
export const flybackDcmSecondaryRms = defineFormula({
  id: 'flyback-dcm-secondary-rms',
  title: 'Secondary rms current in discontinuous conduction',
  subject: 'flyback',
  meaning: 'Rms of a triangular secondary current from its peak and the output current.',
  expression: 'I_{s} = \\sqrt{\\frac{2 I_{o}\\,\\hat{I}_{s}}{3}}',
  output: { tex: 'I_{s}', dimension: 'current', meaning: 'secondary rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    peak: { tex: '\\hat{I}_{s}', dimension: 'current', meaning: 'peak secondary current', unit: 'A' },
  },
  compute({ current, peak }) {
    return Math.sqrt((2 * current * peak) / 3);
  },
  validity: ['Discontinuous conduction.'],
  source: cite(PUBLICATIONS.maximFlyback, 'step 5'),
  examples: [
    { source: cite(PUBLICATIONS.maximFlyback, 'step 5'), inputs: { current: '1 A', peak: '4.2 A' }, printed: '1.67 A', kind: 'published' },
    {
      source: workedWith('numerical integration of the ramp'),
      inputs: { current: '2.4777 A', peak: '8.685 A' },
      printed: '3.788 A',
      kind: 'independent',
    },
  ],
});
