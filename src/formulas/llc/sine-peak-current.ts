import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Peak of a current whose rms is known and whose shape is a sine. */
export const sinePeakCurrent = defineFormula({
  id: 'sine-peak-current',
  title: 'Peak of a sine current',
  subject: 'llc',
  meaning: 'Peak of a current whose rms is known and whose shape is a sine.',
  expression: '\\hat{I} = \\sqrt{2}\\,I',
  output: { tex: '\\hat{I}', dimension: 'current', meaning: 'peak current', unit: 'A' },
  inputs: {
    rms: { tex: 'I', dimension: 'current', meaning: 'rms current', unit: 'A' },
  },
  compute({ rms }) {
    return Math.SQRT2 * rms;
  },
  validity: ['Sinusoidal current.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 23'),
  examples: [
    { source: cite(PUBLICATIONS.fairchildResonant, 'p. 11, step 8'), inputs: { rms: '1.31811 A' }, printed: '1.86 A', kind: 'published' },
    { source: cite(PUBLICATIONS.infineonResonant, 'p. 9'), inputs: { rms: '2.06 A' }, printed: '2.91 A', kind: 'published' },
  ],
});
