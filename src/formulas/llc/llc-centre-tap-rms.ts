import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms in each rectifier and each half winding of a centre tap; in each diode of a full bridge. */
export const llcCentreTapRms = defineFormula({
  id: 'llc-centre-tap-rms',
  title: 'Rectifier rms current of an LLC',
  subject: 'llc',
  meaning: 'Rms in each rectifier and each half winding of a centre tap; in each diode of a full bridge.',
  expression: 'I = \\frac{\\pi}{4}\\,I_{o}',
  output: { tex: 'I', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
  },
  compute({ current }) {
    return (Math.PI / 4) * current;
  },
  validity: ['Half sines, at resonance.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 27'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 27, p. 11, step 9'),
      inputs: { current: '8 A' },
      printed: '6.28 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, 110 % of 25 A'),
      inputs: { current: '27.5 A' },
      printed: '21.6 A',
      kind: 'published',
    },
  ],
});
