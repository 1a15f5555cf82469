import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Factor on the load current of every port when ports that share one total are tested for efficiency. */
export const testLoadFactor = defineFormula({
  id: 'test-load-factor',
  title: 'Test load of shared ports',
  subject: 'sharing',
  meaning:
    'Factor on the load current of every port when several ports are tested together: the rated total over the sum of the ports’ own ratings, 1 where the total covers them all.',
  expression: 'D = \\min\\left(1, \\frac{P_{\\mathrm{total}}}{\\sum V_{i} I_{i}}\\right)',
  output: { tex: 'D', dimension: 'ratio', meaning: 'load factor', unit: '1' },
  inputs: {
    total: { tex: 'P_{\\mathrm{total}}', dimension: 'power', meaning: 'rated total', unit: 'W' },
    sum: { tex: '\\sum V_{i} I_{i}', dimension: 'power', meaning: 'sum of the ports’ own ratings', unit: 'W' },
  },
  compute({ total, sum }) {
    return Math.min(1, total / sum);
  },
  validity: [
    'Every port that the nameplate rates is in the sum, at one and the same test voltage setting.',
    'For test loads only: what the ports give in use is up to the device.',
  ],
  source: {
    title: '10 CFR 430 subpart B appendix Z (2022), uniform test method for external power supplies',
    section: 'several outputs: derating factor D',
    standing: 'read',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
  examples: [
    { source: workedWith('bc'), inputs: { total: '75 W', sum: '120 W' }, printed: '0.625', kind: 'independent' },
    { source: workedWith('bc'), inputs: { total: '105 W', sum: '105 W' }, printed: '1', kind: 'independent' },
  ],
});
