import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Inductance that resonates with a capacitance. */
export const inductanceForResonance = defineFormula({
  id: 'inductance-for-resonance',
  title: 'Inductance for a resonant frequency',
  subject: 'llc',
  meaning: 'Inductance that resonates with a capacitance.',
  expression: 'L = \\frac{1}{(2\\pi f_{0})^{2}\\,C}',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    frequency: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'nF' },
  },
  compute({ frequency, capacitance }) {
    return 1 / ((2 * Math.PI * frequency) ** 2 * capacitance);
  },
  validity: ['Losses left out.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 19'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 19, step 5'),
      inputs: { frequency: '100 kHz', capacitance: '20.2 nF' },
      printed: '126 µH',
      kind: 'published',
      allowance: { fraction: 0.001, reason: '125.4 µH from the printed 20.2 nF, which the source rounds up' },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 6'),
      inputs: { frequency: '100 kHz', capacitance: '116.209 nF' },
      printed: '21.797 µH',
      kind: 'published',
    },
  ],
});
