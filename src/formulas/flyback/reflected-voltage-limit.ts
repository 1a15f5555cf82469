import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Largest reflected voltage for a switch rating with the rule of SLUS223F. */
export const reflectedVoltageLimit = defineFormula({
  id: 'reflected-voltage-limit',
  title: 'Reflected voltage that a switch allows',
  subject: 'flyback',
  meaning: 'Largest reflected voltage for a switch rating with the rule of SLUS223F.',
  expression: 'V_{R} = 0.8\\,(V_{\\mathrm{rated}} - 1.3\\,V_{\\mathrm{in}})',
  output: { tex: 'V_{R}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
  inputs: {
    rating: { tex: 'V_{\\mathrm{rated}}', dimension: 'voltage', meaning: 'rated voltage of the switch', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ rating, input }) {
    return 0.8 * (rating - 1.3 * input);
  },
  validity: ['The 0.8 is that paper’s own allowance and multiplies the whole bracket.'],
  source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 11'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 11'),
      inputs: { rating: '650 V', input: '374.767 V' },
      printed: '130.2 V',
      kind: 'published',
    },
  ],
});
