import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the load’s share of the primary current. */
export const llcLoadCurrent = defineFormula({
  id: 'llc-load-current',
  title: 'Load current in the primary of an LLC',
  subject: 'llc',
  meaning: 'Rms of the load’s share of the primary current.',
  expression: 'I_{oe} = \\frac{\\pi}{2\\sqrt{2}}\\,\\frac{I_{o}}{n}',
  output: { tex: 'I_{oe}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  },
  compute({ current, turnsRatio }) {
    return ((Math.PI / (2 * Math.SQRT2)) * current) / turnsRatio;
  },
  validity: ['First-harmonic approximation.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, primary currents'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, 110 % of 25 A'),
      inputs: { current: '27.5 A', turnsRatio: '16' },
      printed: '1.91 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 8, 110 % of 25 A'),
      inputs: { current: '27.5 A', turnsRatio: '4' },
      printed: '7.636 A',
      kind: 'published',
    },
  ],
});
