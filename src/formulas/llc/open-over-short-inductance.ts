import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Primary inductance with the secondary open over that with the secondary shorted. */
export const openOverShortInductance = defineFormula({
  id: 'open-over-short-inductance',
  title: 'Open-circuit over short-circuit inductance',
  subject: 'llc',
  meaning: 'Primary inductance with the secondary open over that with the secondary shorted.',
  expression: 'm = \\frac{L_{p}}{L_{r}}',
  output: { tex: 'm', dimension: 'ratio', meaning: 'open-circuit over short-circuit inductance', unit: '1' },
  inputs: {
    open: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance, secondary open', unit: 'µH' },
    shorted: { tex: 'L_{r}', dimension: 'inductance', meaning: 'primary inductance, secondary shorted', unit: 'µH' },
  },
  compute({ open, shorted }) {
    return open / shorted;
  },
  validity: ['Both measured at the primary of one transformer, at a frequency well above that of the mains.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 20, turned round'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 20, p. 9, step 5: 630 µH are 5 times 126 µH'),
      inputs: { open: '630 µH', shorted: '126 µH' },
      printed: '5.0',
      kind: 'published',
    },
  ],
});
