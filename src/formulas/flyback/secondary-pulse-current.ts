import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Middle of the secondary pulse in continuous conduction: the output current over the share of the period. */
export const secondaryPulseCurrent = defineFormula({
  id: 'secondary-pulse-current',
  title: 'Secondary current while it flows',
  subject: 'flyback',
  meaning: 'Middle of the secondary pulse in continuous conduction: the output current over the share of the period.',
  expression: 'I_{s} = \\frac{I_{o}}{D_{s}}',
  output: { tex: 'I_{s}', dimension: 'current', meaning: 'current while it flows', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    share: { tex: 'D_{s}', dimension: 'ratio', meaning: 'share of the period in which it flows', unit: '1' },
  },
  compute({ current, share }) {
    return current / share;
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13'),
  examples: [
    {
      source: cite(PUBLICATIONS.unitrodeMagnetics, 'p. 5-13'),
      inputs: { current: '10 A', share: '0.462' },
      printed: '21.65 A',
      kind: 'published',
    },
  ],
});
