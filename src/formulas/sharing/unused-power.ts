import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** What the rated total leaves over in one set of ports; below nought where the shares promise more than the total. */
export const unusedPower = defineFormula({
  id: 'unused-power',
  title: 'Unused power',
  subject: 'sharing',
  meaning: 'What the rated total leaves over in one set of ports; below nought where the shares promise more than the total.',
  expression: 'P_{u} = P_{\\mathrm{total}} - P',
  output: { tex: 'P_{u}', dimension: 'power', meaning: 'unused power', unit: 'W' },
  inputs: {
    total: { tex: 'P_{\\mathrm{total}}', dimension: 'power', meaning: 'rated total', unit: 'W' },
    sum: { tex: 'P', dimension: 'power', meaning: 'sum of the shares', unit: 'W' },
  },
  compute({ total, sum }) {
    return total - sum;
  },
  validity: [],
  source: { title: 'Definition', section: 'difference of powers', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc'),
      inputs: { total: '100 W', sum: '95 W' },
      printed: '5 W',
      kind: 'independent',
    },
  ],
});
