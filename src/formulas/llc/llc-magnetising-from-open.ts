import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Inductance across the winding of the equivalent transformer, where its leakage is the resonant inductance. */
export const llcMagnetisingFromOpen = defineFormula({
  id: 'llc-magnetising-from-open',
  title: 'Magnetising inductance of a transformer whose leakage resonates',
  subject: 'llc',
  meaning: 'Inductance across the winding of the equivalent transformer, where its leakage is the resonant inductance.',
  expression: 'L_{m} = L_{p} - L_{r}',
  output: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance of the equivalent circuit', unit: 'µH' },
  inputs: {
    open: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance, secondary open', unit: 'µH' },
    shorted: { tex: 'L_{r}', dimension: 'inductance', meaning: 'primary inductance, secondary shorted', unit: 'µH' },
  },
  compute({ open, shorted }) {
    return open > shorted ? open - shorted : Number.NaN;
  },
  validity: ['The open-circuit inductance must be above the short-circuit inductance.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 23, which divides by the same difference'),
  examples: [
    {
      source: workedWith('bc, from the 630 µH of AN-4151 and the 118 µH that its 22 nF and 99 kHz ask for'),
      inputs: { open: '630 µH', shorted: '118 µH' },
      printed: '512 µH',
      kind: 'independent',
    },
  ],
});
