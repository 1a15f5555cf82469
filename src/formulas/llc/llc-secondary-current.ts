import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the whole secondary current; also of a winding behind a full bridge. */
export const llcSecondaryCurrent = defineFormula({
  id: 'llc-secondary-current',
  title: 'Secondary current of an LLC',
  subject: 'llc',
  meaning: 'Rms of the whole secondary current; also of a winding behind a full bridge.',
  expression: 'I_{s} = \\frac{\\pi}{2\\sqrt{2}}\\,I_{o}',
  output: { tex: 'I_{s}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
  },
  compute({ current }) {
    return (Math.PI / (2 * Math.SQRT2)) * current;
  },
  validity: ['First-harmonic approximation, at resonance.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, secondary currents'),
  examples: [
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 9, 110 % of 25 A'),
      inputs: { current: '27.5 A' },
      printed: '30.545 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, 110 % of 25 A'),
      inputs: { current: '27.5 A' },
      printed: '30.6 A',
      kind: 'published',
      allowance: { fraction: 0.0005, reason: 'the source multiplies 1.91 A by 16' },
    },
  ],
});
