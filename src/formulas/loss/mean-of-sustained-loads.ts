import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Mean of the efficiencies at the loads that a supply could hold, where it could not hold all four. */
export const meanOfSustainedLoads = defineFormula({
  id: 'mean-of-sustained-loads',
  title: 'Average active efficiency over the loads that were held',
  subject: 'loss',
  meaning:
    'Mean of the efficiencies at those of the four loads that a supply could hold. A load at which it folded back or reset is left out.',
  expression: '\\eta_{a} = \\frac{\\Sigma_{\\eta}}{n}',
  output: { tex: '\\eta_{a}', dimension: 'ratio', meaning: 'average active efficiency', unit: '%' },
  inputs: {
    sum: { tex: '\\Sigma_{\\eta}', dimension: 'ratio', meaning: 'sum of the efficiencies at the loads that were held', unit: '%' },
    count: { tex: 'n', dimension: 'ratio', meaning: 'number of these loads', unit: '1' },
  },
  compute({ sum, count }) {
    return sum / count;
  },
  validity: [
    'At least one of the loads at 25, 50, 75 and 100 % was held.',
    'For the test of the United States, which says so; what the rules of the European Union ask then was not at hand.',
  ],
  source: {
    title: '10 CFR 430 Subpart B Appendix Z (2022)',
    section: '5(a)(1)(vi)(B), 5(b)(1)(vi)(B), 6(a)(1)(v)(B) and 6(b)(1)(vi)(B)',
    standing: 'read',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
  examples: [
    {
      source: workedWith('bc, from the printed rows of TIDA-01622, table 7 (20 V at 115 V), all four held'),
      inputs: { sum: '363.05948 %', count: '4' },
      printed: '90.765 %',
      kind: 'independent',
    },
    {
      source: workedWith('bc, from the same rows without the one at the whole load'),
      inputs: { sum: '271.8274 %', count: '3' },
      printed: '90.609 %',
      kind: 'independent',
    },
  ],
});
