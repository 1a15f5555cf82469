import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Peak of the secondary current: the primary peak times the turns ratio. */
export const secondaryPeakCurrent = defineFormula({
  id: 'secondary-peak-current',
  title: 'Peak secondary current',
  subject: 'flyback',
  meaning: 'Peak of the secondary current: the primary peak times the turns ratio.',
  expression: '\\hat{I}_{s} = n\\,\\hat{I}_{p}',
  output: { tex: '\\hat{I}_{s}', dimension: 'current', meaning: 'peak secondary current', unit: 'A' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    primary: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  },
  compute({ turnsRatio, primary }) {
    return turnsRatio * primary;
  },
  validity: ['Leakage left out; one output.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.4, eq. 20'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.4, eq. 20'),
      inputs: { turnsRatio: '10', primary: '1.3634 A' },
      printed: '13.634 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 5'),
      inputs: { turnsRatio: '0.5', primary: '8.4 A' },
      printed: '4.17 A',
      kind: 'published',
      allowance: { fraction: 0.0075, reason: 'the source prints 4.17 A where half of its 8.4 A is 4.2 A' },
    },
  ],
});
