import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Life of a capacitor that spends a share of its time at one temperature and the rest at another: the harmonic mean. */
export const mixedLife = defineFormula({
  id: 'mixed-life',
  title: 'Life at two temperatures in turn',
  subject: 'life',
  meaning: 'Life of a capacitor that spends a share of its time at one temperature and the rest at another: the harmonic mean.',
  expression: 'L = \\left(\\frac{s}{L_{1}} + \\frac{1 - s}{L_{2}}\\right)^{-1}',
  output: { tex: 'L', dimension: 'time', meaning: 'life', unit: 'h' },
  inputs: {
    share: { tex: 's', dimension: 'ratio', meaning: 'share of the time at the first', unit: '%' },
    first: { tex: 'L_{1}', dimension: 'time', meaning: 'life at the first temperature', unit: 'h' },
    second: { tex: 'L_{2}', dimension: 'time', meaning: 'life at the second temperature', unit: 'h' },
  },
  compute({ share, first, second }) {
    return share >= 0 && share <= 1 ? 1 / (share / first + (1 - share) / second) : Number.NaN;
  },
  validity: ['Rates of ageing add.', 'A share between 0 and 100 %.'],
  source: cite(PUBLICATIONS.coselLife, '2, example, its mixing of lives'),
  examples: [
    {
      source: workedWith('bc: a third of 64 000 h and two thirds of 21 333.3 h, the mean of 32 000 h and 16 000 h'),
      inputs: { share: '0.333333', first: '64000 h', second: '21333.3 h' },
      printed: '27429 h',
      kind: 'independent',
      allowance: { fraction: 2e-5, reason: 'a third is written with six digits' },
    },
  ],
});
