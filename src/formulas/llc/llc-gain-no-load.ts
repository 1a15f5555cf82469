import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Gain at a switching frequency when nothing is drawn: what the highest frequency has to hold down. */
export const llcGainNoLoad = defineFormula({
  id: 'llc-gain-no-load',
  title: 'Gain of an LLC tank without load',
  subject: 'llc',
  meaning: 'Gain at a switching frequency when nothing is drawn: what the highest frequency has to hold down.',
  expression: 'M_{0} = \\frac{L_{n} f_{n}^{2}}{(L_{n} + 1) f_{n}^{2} - 1}',
  output: { tex: 'M_{0}', dimension: 'ratio', meaning: 'gain without load', unit: '1' },
  inputs: {
    inductanceRatio: { tex: 'L_{n}', dimension: 'ratio', meaning: 'magnetising over resonant inductance', unit: '1' },
    frequencyRatio: { tex: 'f_{n}', dimension: 'ratio', meaning: 'switching over resonant frequency', unit: '1' },
  },
  compute({ inductanceRatio, frequencyRatio }) {
    const reach = (inductanceRatio + 1) * frequencyRatio ** 2 - 1;
    return reach > 0 ? (inductanceRatio * frequencyRatio ** 2) / reach : Number.NaN;
  },
  validity: ['Above the frequency at which magnetising and resonant inductance together resonate.'],
  source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5'),
  examples: [
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 5, first row'),
      inputs: { inductanceRatio: '2.41', frequencyRatio: '1.379' },
      printed: '0.836',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 5, last row'),
      inputs: { inductanceRatio: '4.71', frequencyRatio: '3.6928' },
      printed: '0.836',
      kind: 'published',
    },
  ],
});
