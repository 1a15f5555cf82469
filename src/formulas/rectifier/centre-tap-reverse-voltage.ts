import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Voltage that each rectifier of a centre-tapped secondary blocks while the other conducts. */
export const centreTapReverseVoltage = defineFormula({
  id: 'centre-tap-reverse-voltage',
  title: 'Reverse voltage of a centre-tapped rectifier',
  subject: 'rectifier',
  meaning: 'Voltage that each rectifier of a centre-tapped secondary blocks while the other conducts.',
  expression: 'V_{\\mathrm{rev}} = 2\\,(V_{o} + V_{F})',
  output: { tex: 'V_{\\mathrm{rev}}', dimension: 'voltage', meaning: 'reverse voltage', unit: 'V' },
  inputs: {
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    drop: { tex: 'V_{F}', dimension: 'voltage', meaning: 'forward drop of a rectifier', unit: 'V' },
  },
  compute({ output, drop }) {
    return 2 * (output + drop);
  },
  validity: ['LLC half bridge with a centre-tapped secondary; ringing comes on top.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 26'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'p. 11, eq. 26, step 9'),
      inputs: { output: '24 V', drop: '0.9 V' },
      printed: '49.8 V',
      kind: 'published',
    },
  ],
});
