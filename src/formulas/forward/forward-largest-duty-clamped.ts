import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Largest duty at which a clamp of fixed voltage still brings the core back within the rest of the cycle. */
export const forwardLargestDutyClamped = defineFormula({
  id: 'forward-largest-duty-clamped',
  title: 'Largest duty with a clamp',
  subject: 'forward',
  meaning: 'Largest duty at which a clamp of fixed voltage still brings the core back within the rest of the cycle.',
  expression: 'D_{\\max} = \\frac{V_{c}}{V_{\\mathrm{in}} + V_{c}}',
  output: { tex: 'D_{\\max}', dimension: 'ratio', meaning: 'largest duty', unit: '1' },
  inputs: {
    clamp: { tex: 'V_{c}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ clamp, input }) {
    return clamp / (input + clamp);
  },
  validity: ['Volt-seconds of the two parts of a cycle are equal; the core has to rest at zero before the next one.'],
  source: { title: 'Forward converter', section: 'volt-seconds of the transformer', standing: 'common practice' },
  examples: [
    { source: workedWith('Python: 180 V, 200 V'), inputs: { clamp: '180 V', input: '200 V' }, printed: '0.4737', kind: 'independent' },
  ],
});
