import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms in a secondary winding from the rms of the primary, in continuous conduction. */
export const flybackSecondaryRms = defineFormula({
  id: 'flyback-secondary-rms',
  title: 'Secondary rms current from the primary',
  subject: 'flyback',
  meaning: 'Rms in a secondary winding from the rms of the primary, in continuous conduction.',
  expression: 'I_{s} = I_{p}\\,n\\,K\\sqrt{\\frac{1 - D}{D}}',
  output: { tex: 'I_{s}', dimension: 'current', meaning: 'secondary rms current', unit: 'A' },
  inputs: {
    primary: { tex: 'I_{p}', dimension: 'current', meaning: 'primary rms current', unit: 'A' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    share: { tex: 'K', dimension: 'ratio', meaning: 'share of the power that this output carries', unit: '%' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
  },
  compute({ primary, turnsRatio, share, duty }) {
    return primary * turnsRatio * share * Math.sqrt((1 - duty) / duty);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 19'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 19, appendix step 8: 85 V over 3.8 V, 6.6 W of 46.9 W'),
      inputs: { primary: '1.07 A', turnsRatio: '22.3684', share: '0.140725', duty: '0.48' },
      printed: '3.5 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 19, appendix step 8: 85 V over 13.2 V, 18 W of 46.9 W'),
      inputs: { primary: '1.07 A', turnsRatio: '6.43939', share: '0.383795', duty: '0.48' },
      printed: '2.75 A',
      kind: 'published',
    },
  ],
});
