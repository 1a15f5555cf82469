import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Frequency at which resonant inductance and capacitance cancel, and at which the gain does not depend on the load. */
export const llcResonantFrequency = defineFormula({
  id: 'llc-resonant-frequency',
  title: 'Resonant frequency',
  subject: 'llc',
  meaning: 'Frequency at which resonant inductance and capacitance cancel, and at which the gain does not depend on the load.',
  expression: 'f_{0} = \\frac{1}{2\\pi\\sqrt{L_{r}\\,C_{r}}}',
  output: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
  inputs: {
    inductance: { tex: 'L_{r}', dimension: 'inductance', meaning: 'resonant inductance', unit: 'µH' },
    capacitance: { tex: 'C_{r}', dimension: 'capacitance', meaning: 'resonant capacitance', unit: 'nF' },
  },
  compute({ inductance, capacitance }) {
    return 1 / (2 * Math.PI * Math.sqrt(inductance * capacitance));
  },
  validity: ['With the leakage as resonant inductance it is the short-circuit inductance that counts.'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, steps 1 to 6'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example: printed 124.4 kHz'),
      inputs: { inductance: '60 µH', capacitance: '27.3 nF' },
      printed: '124.4 kHz',
      kind: 'published',
      allowance: { fraction: 0.0001, reason: '124.35 kHz from the printed parts, which the source rounds up' },
    },
  ],
});
