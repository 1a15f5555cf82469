import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak-to-peak ripple of the inductor current of a boost, or of a four-switch converter that steps up. */
export const boostInductorRipple = defineFormula({
  id: 'boost-inductor-ripple',
  title: 'Inductor ripple of a boost',
  subject: 'buck',
  meaning: 'Peak-to-peak ripple of the inductor current of a boost, or of a four-switch converter that steps up.',
  expression: '\\Delta I = \\frac{V_{i}}{L\\,f}\\left(1 - \\frac{V_{i}}{V_{o}}\\right)',
  output: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
  inputs: {
    input: { tex: 'V_{i}', dimension: 'voltage', meaning: 'input voltage', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ input, output, inductance, frequency }) {
    return output >= input ? (input / (inductance * frequency)) * (1 - input / output) : Number.NaN;
  },
  turningPoints({ output }) {
    return { input: output / 2 };
  },
  validity: ['The output must lie above the input.', 'Continuous conduction.'],
  source: cite(PUBLICATIONS.linearBuckBoost3789, 'p. 23'),
  examples: [
    {
      source: workedWith('Python, from LTC3789, p. 23'),
      inputs: { input: '6 V', output: '12 V', inductance: '6.8 µH', frequency: '400 kHz' },
      printed: '1.1029 A',
      kind: 'independent',
    },
  ],
});
