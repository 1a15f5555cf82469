import { defineFormula } from '../../values/define-formula.ts';

/** Power that all ports in use get together; a pool that several ports draw on counts once. Folded over any number. */
export const sumOfShares = defineFormula({
  id: 'sum-of-shares',
  title: 'Sum of shares',
  subject: 'sharing',
  meaning: 'Power that all ports in use get together; a pool that several ports draw on counts once. Folded over any number.',
  expression: 'P = P_{1} + P_{2}',
  output: { tex: 'P', dimension: 'power', meaning: 'power of both', unit: 'W' },
  inputs: {
    first: { tex: 'P_{1}', dimension: 'power', meaning: 'first share', unit: 'W' },
    second: { tex: 'P_{2}', dimension: 'power', meaning: 'second share', unit: 'W' },
  },
  compute({ first, second }) {
    return first + second;
  },
  validity: ['Each pool counted once.'],
  source: { title: 'Definition', section: 'sum of powers', standing: 'common practice' },
  examples: [
    {
      source: {
        title: 'Texas Instruments SLVAFG6B, TPS257xx-Q1 system power management (2022, revised 2024)',
        section: 'two ports of 37.5 W in a 75 W system',
        standing: 'read',
      },
      inputs: { first: '37.5 W', second: '37.5 W' },
      printed: '75 W',
      kind: 'published',
    },
  ],
});
