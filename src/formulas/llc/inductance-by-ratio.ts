import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Magnetising or open-circuit inductance from the resonant one and their ratio. */
export const inductanceByRatio = defineFormula({
  id: 'inductance-by-ratio',
  title: 'Inductance by a ratio',
  subject: 'llc',
  meaning: 'Magnetising or open-circuit inductance from the resonant one and their ratio.',
  expression: 'L = k\\,L_{r}',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    ratio: { tex: 'k', dimension: 'ratio', meaning: 'ratio of the inductances', unit: '1' },
    inductance: { tex: 'L_{r}', dimension: 'inductance', meaning: 'resonant inductance', unit: 'µH' },
  },
  compute({ ratio, inductance }) {
    return ratio * inductance;
  },
  validity: ['AN-4151 counts the open-circuit over the short-circuit inductance, SLUP263 the magnetising over the resonant one.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 20'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 20, step 5'),
      inputs: { ratio: '5', inductance: '126 µH' },
      printed: '630 µH',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 7'),
      inputs: { ratio: '3', inductance: '21.797 µH' },
      printed: '65.392 µH',
      kind: 'published',
      allowance: { fraction: 2e-5, reason: 'the source multiplies an inductance with more digits than it prints' },
    },
  ],
});
