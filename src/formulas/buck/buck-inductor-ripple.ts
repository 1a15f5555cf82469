import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak-to-peak ripple of the inductor current of a buck, or of a four-switch converter that steps down. */
export const buckInductorRipple = defineFormula({
  id: 'buck-inductor-ripple',
  title: 'Inductor ripple of a buck',
  subject: 'buck',
  meaning: 'Peak-to-peak ripple of the inductor current of a buck, or of a four-switch converter that steps down.',
  expression: '\\Delta I = \\frac{(V_{i} - V_{o})\\,V_{o}}{V_{i}\\,L\\,f}',
  output: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  inputs: {
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ input, output, inductance, frequency }) {
    return input >= output ? ((input - output) * output) / (input * inductance * frequency) : Number.NaN;
  },
  turningPoints({ input }) {
    return { output: input / 2 };
  },
  validity: ['The input must lie above the output.', 'Continuous conduction.'],
  source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 11'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasBuck, 'p. 21, eq. 11'),
      inputs: { input: '14 V', output: '1.8 V', inductance: '1 µH', frequency: '600 kHz' },
      printed: '2.6 A',
      kind: 'published',
    },
    {
      source: workedWith('Python, from LTC3789, p. 23'),
      inputs: { input: '18 V', output: '12 V', inductance: '6.8 µH', frequency: '400 kHz' },
      printed: '1.4706 A',
      kind: 'independent',
    },
  ],
});
