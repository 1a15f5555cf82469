import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Reflected voltage that a duty at the lowest bulk voltage asks for. */
export const reflectedVoltageFromDuty = defineFormula({
  id: 'reflected-voltage-from-duty',
  title: 'Reflected voltage from the duty',
  subject: 'flyback',
  meaning: 'Reflected voltage that a duty at the lowest bulk voltage asks for.',
  expression: 'V_{R} = \\frac{D}{1 - D}\\,V_{\\mathrm{in}}',
  output: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ duty, input }) {
    return duty < 1 ? (duty / (1 - duty)) * input : Number.NaN;
  },
  validity: ['Continuous conduction.', 'The duty must be below 1.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 5'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 5, appendix step 3, p. 13'),
      inputs: { duty: '0.48', input: '92.16 V' },
      printed: '85 V',
      kind: 'published',
    },
  ],
});
