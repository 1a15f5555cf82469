import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Mean of the efficiencies at a quarter, half, three quarters and the whole of the load, which the limits of external power supplies are set for. */
export const meanEfficiency = defineFormula({
  id: 'mean-efficiency',
  title: 'Average active efficiency',
  subject: 'loss',
  meaning:
    'Mean of the efficiencies at a quarter, half, three quarters and the whole of the load, which the limits of external power supplies are set for.',
  expression: '\\eta_{a} = \\frac{\\eta_{25} + \\eta_{50} + \\eta_{75} + \\eta_{100}}{4}',
  output: { tex: '\\eta_{a}', dimension: 'ratio', meaning: 'average active efficiency', unit: '%' },
  inputs: {
    quarter: { tex: '\\eta_{25}', dimension: 'ratio', meaning: 'efficiency at 25 % of the load', unit: '%' },
    half: { tex: '\\eta_{50}', dimension: 'ratio', meaning: 'efficiency at 50 % of the load', unit: '%' },
    threeQuarters: { tex: '\\eta_{75}', dimension: 'ratio', meaning: 'efficiency at 75 % of the load', unit: '%' },
    full: { tex: '\\eta_{100}', dimension: 'ratio', meaning: 'efficiency at the whole load', unit: '%' },
  },
  compute({ quarter, half, threeQuarters, full }) {
    return (quarter + half + threeQuarters + full) / 4;
  },
  validity: ['All four at one line voltage, one output voltage and one place of measurement.', 'The 10 % point is not part of the mean.'],
  source: {
    title: '10 CFR 430 Subpart B Appendix Z (2022)',
    section: 'average active-mode efficiency',
    standing: 'read',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
  examples: [
    {
      source: workedWith('bc, from the printed rows of TIDA-01622, table 7 (20 V at 115 V)'),
      inputs: { quarter: '89.7113 %', half: '90.84685 %', threeQuarters: '91.26925 %', full: '91.23208 %' },
      printed: '90.765 %',
      kind: 'independent',
    },
    {
      source: workedWith('bc, from the printed rows of TIDA-01622, table 4 (5 V at 115 V)'),
      inputs: { quarter: '79.50637 %', half: '83.21667 %', threeQuarters: '83.83769 %', full: '84.71186 %' },
      printed: '82.818 %',
      kind: 'independent',
    },
  ],
});
