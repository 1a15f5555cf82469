import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Switching frequency of a resonant converter from its ratio to the resonance. */
export const llcSwitchingFrequency = defineFormula({
  id: 'llc-switching-frequency',
  title: 'Switching frequency from its ratio to the resonance',
  subject: 'llc',
  meaning: 'Switching frequency of a resonant converter from its ratio to the resonance: what a scope shows at a corner of the gain curve.',
  expression: 'f = f_{n} f_{0}',
  output: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  inputs: {
    frequencyRatio: { tex: 'f_{n}', dimension: 'ratio', meaning: 'switching over resonant frequency', unit: '1' },
    resonance: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
  },
  compute({ frequencyRatio, resonance }) {
    return frequencyRatio * resonance;
  },
  validity: ['Both are above zero.'],
  source: { title: 'Definition', section: 'ratio of two values', standing: 'common practice' },
  examples: [
    { source: workedWith('bc'), inputs: { frequencyRatio: '1.0386', resonance: '123.90 kHz' }, printed: '128.68 kHz', kind: 'independent' },
  ],
});
