import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat from the rms current in the on-resistance at working temperature. */
export const conductionLoss = defineFormula({
  id: 'conduction-loss',
  title: 'Conduction loss of a switch',
  subject: 'loss',
  meaning: 'Heat from the rms current in the on-resistance at working temperature.',
  expression: 'P = I^{2}\\,k\\,R_{25}',
  output: { tex: 'P', dimension: 'power', meaning: 'conduction loss', unit: 'W' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'current, rms', unit: 'A' },
    factor: { tex: 'k', dimension: 'ratio', meaning: 'resistance when hot over that at 25 °C', unit: '1' },
    resistance: { tex: 'R_{25}', dimension: 'resistance', meaning: 'on-resistance at 25 °C', unit: 'mΩ' },
  },
  compute({ current, factor, resistance }) {
    return current ** 2 * factor * resistance;
  },
  validity: ['Rms over the whole mains cycle where the current follows it.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 12, eq. 17'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 12, eq. 17'),
      inputs: { current: '12.2 A', factor: '1.8', resistance: '45 mΩ' },
      printed: '12 W',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { current: '12.2 A', factor: '1.8', resistance: '45 mΩ' },
      printed: '12.056 W',
      kind: 'independent',
    },
  ],
});
