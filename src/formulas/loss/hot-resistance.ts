import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** On-resistance of a switch at its working temperature. */
export const hotResistance = defineFormula({
  id: 'hot-resistance',
  title: 'On-resistance when hot',
  subject: 'loss',
  meaning: 'On-resistance of a switch at its working temperature.',
  expression: 'R = k\\,R_{25}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'on-resistance, hot', unit: 'mΩ' },
  inputs: {
    factor: { tex: 'k', dimension: 'ratio', meaning: 'resistance when hot over that at 25 °C', unit: '1' },
    resistance: { tex: 'R_{25}', dimension: 'resistance', meaning: 'on-resistance at 25 °C', unit: 'mΩ' },
  },
  compute({ factor, resistance }) {
    return factor * resistance;
  },
  validity: ['The factor depends on the technology: about 1.8 at 100 °C and 2.1 to 2.6 at 150 °C for superjunction parts.'],
  remarks: ['Factors of 1.2 to 1.6 in older papers are for low-voltage parts or lower temperatures.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 12, eq. 17'),
  examples: [
    {
      source: workedWith('bc, with the factor of 1.8 at 100 °C'),
      inputs: { factor: '1.8', resistance: '45 mΩ' },
      printed: '81.0 mΩ',
      kind: 'independent',
    },
  ],
});
