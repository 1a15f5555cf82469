import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Inductance for a wanted ripple. */
export const buckInductance = defineFormula({
  id: 'buck-inductance',
  title: 'Inductance of a buck',
  subject: 'buck',
  meaning: 'Inductance for a wanted ripple.',
  expression: 'L = \\frac{(V_{i} - V_{o})\\,V_{o}}{V_{i}\\,f\\,\\Delta I}',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  },
  compute({ input, output, frequency, ripple }) {
    return input >= output ? ((input - output) * output) / (input * frequency * ripple) : Number.NaN;
  },
  turningPoints({ input }) {
    return { output: input / 2 };
  },
  validity: ['The input must lie above the output.'],
  source: cite(PUBLICATIONS.stBuckBoost, '1.4.3'),
  examples: [
    {
      source: cite(PUBLICATIONS.stBuckBoost, '1.4.3: 30 % of 0.5 A'),
      inputs: { input: '15 V', output: '3 V', frequency: '250 kHz', ripple: '0.15 A' },
      printed: '64 µH',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { input: '15 V', output: '3 V', frequency: '250 kHz', ripple: '0.15 A' },
      printed: '64.00 µH',
      kind: 'independent',
    },
  ],
});
