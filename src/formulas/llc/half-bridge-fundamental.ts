import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the fundamental of the square wave of a half bridge. */
export const halfBridgeFundamental = defineFormula({
  id: 'half-bridge-fundamental',
  title: 'Fundamental of a half bridge',
  subject: 'llc',
  meaning: 'Rms of the fundamental of the square wave of a half bridge.',
  expression: 'V_{1} = \\frac{\\sqrt{2}}{\\pi}\\,V_{\\mathrm{in}}',
  output: { tex: 'V_{1}', dimension: 'voltage', meaning: 'rms of the fundamental', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
  },
  compute({ input }) {
    return (Math.SQRT2 / Math.PI) * input;
  },
  validity: ['Duty of one half.'],
  source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 11'),
  examples: [
    { source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 11'), inputs: { input: '337.2 V' }, printed: '151.79 V', kind: 'published' },
  ],
});
