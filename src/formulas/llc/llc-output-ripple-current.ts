import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms of what a rectified sine leaves for the output capacitor. */
export const llcOutputRippleCurrent = defineFormula({
  id: 'llc-output-ripple-current',
  title: 'Output capacitor ripple of an LLC',
  subject: 'llc',
  meaning: 'Rms of what a rectified sine leaves for the output capacitor.',
  expression: 'I_{C} = I_{o}\\sqrt{\\frac{\\pi^{2} - 8}{8}}',
  output: { tex: 'I_{C}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
  },
  compute({ current }) {
    return current * Math.sqrt((Math.PI ** 2 - 8) / 8);
  },
  validity: ['At resonance; more below it.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 28'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 28, p. 12, step 9'),
      inputs: { current: '8 A' },
      printed: '3.857 A',
      kind: 'published',
      allowance: { fraction: 0.003, reason: 'the source prints 3.857 A where 8 A give 3.867 A' },
    },
    {
      source: workedWith('numerical integration of the rectified sine'),
      inputs: { current: '8 A' },
      printed: '3.867 A',
      kind: 'independent',
    },
  ],
});
