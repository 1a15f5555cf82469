import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Resistance that holds a clamp at a voltage while it takes the loss. */
export const clampResistance = defineFormula({
  id: 'clamp-resistance',
  title: 'Resistance of an RCD clamp',
  subject: 'flyback',
  meaning: 'Resistance that holds a clamp at a voltage while it takes the loss.',
  expression: 'R = \\frac{V_{\\mathrm{clamp}}^{2}}{P}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'kΩ' },
  inputs: {
    clamp: { tex: 'V_{\\mathrm{clamp}}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
    loss: { tex: 'P', dimension: 'power', meaning: 'loss of the clamp', unit: 'W' },
  },
  compute({ clamp, loss }) {
    return clamp ** 2 / loss;
  },
  validity: ['The loss must be above zero.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 27'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 27, appendix step 11'),
      inputs: { clamp: '190 V', loss: '1.0856 W' },
      printed: '33.1 kΩ',
      kind: 'published',
      allowance: { fraction: 0.004, reason: 'the source divides by a loss rounded to 1.09 W' },
    },
  ],
});
