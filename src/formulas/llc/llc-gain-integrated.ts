import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Gain at resonance when the leakage of the transformer is the resonant inductance: above 1. */
export const llcGainIntegrated = defineFormula({
  id: 'llc-gain-integrated',
  title: 'Gain at resonance with the leakage as resonant inductance',
  subject: 'llc',
  meaning: 'Gain at resonance when the leakage of the transformer is the resonant inductance: above 1.',
  expression: 'M = \\sqrt{\\frac{m}{m - 1}}',
  output: { tex: 'M', dimension: 'ratio', meaning: 'gain at resonance', unit: '1' },
  inputs: {
    ratio: { tex: 'm', dimension: 'ratio', meaning: 'open-circuit over short-circuit primary inductance', unit: '1' },
  },
  compute({ ratio }) {
    return ratio > 1 ? Math.sqrt(ratio / (ratio - 1)) : Number.NaN;
  },
  validity: ['The open-circuit inductance must be above the short-circuit inductance.', 'Leakage shared equally by both sides.'],
  remarks: ['With a separate choke the gain at resonance is 1: which inductance was measured decides.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 13'),
  examples: [
    { source: cite(PUBLICATIONS.fairchildResonant, 'eq. 13, p. 9, step 2'), inputs: { ratio: '5' }, printed: '1.12', kind: 'published' },
  ],
});
