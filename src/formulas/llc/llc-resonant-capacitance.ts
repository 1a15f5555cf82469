import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance that gives a wanted quality factor at a resonant frequency. */
export const llcResonantCapacitance = defineFormula({
  id: 'llc-resonant-capacitance',
  title: 'Resonant capacitance for a quality factor',
  subject: 'llc',
  meaning: 'Capacitance that gives a wanted quality factor at a resonant frequency.',
  expression: 'C_{r} = \\frac{1}{2\\pi Q_{e}\\,f_{0}\\,R_{e}}',
  output: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
  inputs: {
    quality: { tex: 'Q_{e}', dimension: 'ratio', meaning: 'quality factor', unit: '1' },
    frequency: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
    load: { tex: 'R_{e}', dimension: 'resistance', meaning: 'load as the tank sees it', unit: 'Ω' },
  },
  compute({ quality, frequency, load }) {
    return 1 / (2 * Math.PI * quality * frequency * load);
  },
  validity: ['First-harmonic approximation.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 18'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 18, step 5'),
      inputs: { quality: '0.4', frequency: '100 kHz', load: '197 Ω' },
      printed: '20.2 nF',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 6'),
      inputs: { quality: '0.55', frequency: '100 kHz', load: '24.901 Ω' },
      printed: '116.209 nF',
      kind: 'published',
    },
  ],
});
