import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Resistance that a current meets on average where two switches carry it in turns. */
export const turnTakingResistance = defineFormula({
  id: 'turn-taking-resistance',
  title: 'Resistance of two switches that take turns',
  subject: 'loss',
  meaning: 'Resistance that a current meets on average where two switches carry it in turns.',
  expression: 'R = D\\,R_{1} + (1 - D)\\,R_{2}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'mean resistance', unit: 'mΩ' },
  inputs: {
    first: { tex: 'R_{1}', dimension: 'resistance', meaning: 'resistance of the one switch', unit: 'mΩ' },
    second: { tex: 'R_{2}', dimension: 'resistance', meaning: 'resistance of the other switch', unit: 'mΩ' },
    share: { tex: 'D', dimension: 'ratio', meaning: 'share of the period in which the first carries', unit: '1' },
  },
  compute({ first, second, share }) {
    return share * first + (1 - share) * second;
  },
  validity: ['One of the two carries at any time; dead times left out.'],
  source: cite(PUBLICATIONS.circuitTheory, 'mean power of a current that flows through one of two resistances'),
  examples: [
    {
      source: workedWith('bc: 5 V from 12 V, 8 mΩ above and 3 mΩ below'),
      inputs: { first: '8 mΩ', second: '3 mΩ', share: '0.416667' },
      printed: '5.083 mΩ',
      kind: 'independent',
    },
  ],
});
