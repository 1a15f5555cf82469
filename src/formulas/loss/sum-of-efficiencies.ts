import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Efficiencies added up for a mean. Folded over any number. */
export const sumOfEfficiencies = defineFormula({
  id: 'sum-of-efficiencies',
  title: 'Sum of efficiencies',
  subject: 'loss',
  meaning: 'Efficiencies added up for a mean over the loads that were held. Folded over any number; by itself it says nothing.',
  expression: '\\Sigma_{\\eta} = \\Sigma_{1} + \\eta_{2}',
  output: { tex: '\\Sigma_{\\eta}', dimension: 'ratio', meaning: 'sum of the efficiencies', unit: '%' },
  inputs: {
    first: { tex: '\\Sigma_{1}', dimension: 'ratio', meaning: 'one efficiency, or the sum of those before', unit: '%' },
    second: { tex: '\\eta_{2}', dimension: 'ratio', meaning: 'the next efficiency', unit: '%' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: ['All at one line voltage, one output voltage and one place of measurement.'],
  source: { title: 'Definition', section: 'sum', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, from two printed rows of TIDA-01622, table 7 (20 V at 115 V)'),
      inputs: { first: '89.7113 %', second: '90.84685 %' },
      printed: '180.55815 %',
      kind: 'independent',
    },
  ],
});
