import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Resistance that rectifier and load show to the sine of the resonant tank. */
export const llcLoadResistance = defineFormula({
  id: 'llc-load-resistance',
  title: 'Load as the resonant tank sees it',
  subject: 'llc',
  meaning: 'Resistance that rectifier and load show to the sine of the resonant tank.',
  expression: 'R_{e} = \\frac{8 n^{2}}{\\pi^{2}}\\,\\frac{V_{o}}{I_{o}}',
  output: { tex: 'R_{e}', dimension: 'resistance', meaning: 'equivalent resistance', unit: 'Ω' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
  },
  compute({ turnsRatio, output, current }) {
    return ((8 * turnsRatio ** 2) / Math.PI ** 2) * (output / current);
  },
  validity: ['First-harmonic approximation.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 17'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 17, step 4: 192 W'),
      inputs: { turnsRatio: '9', output: '24 V', current: '8 A' },
      printed: '197 Ω',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 7, 2.2.5'),
      inputs: { turnsRatio: '16.5', output: '12 V', current: '25 A' },
      printed: '106 Ω',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example'),
      inputs: { turnsRatio: '16', output: '12 V', current: '25 A' },
      printed: '99.7 Ω',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the restated value is 0.1 % above what its own inputs give' },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4'),
      inputs: { turnsRatio: '4', output: '48 V', current: '25 A' },
      printed: '24.901 Ω',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4: 110 % load'),
      inputs: { turnsRatio: '4', output: '48 V', current: '27.5 A' },
      printed: '22.637 Ω',
      kind: 'published',
    },
  ],
});
