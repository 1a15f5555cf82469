import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Switching over resonant frequency: below 1 the tank raises the voltage, above 1 it lowers it. */
export const llcFrequencyRatio = defineFormula({
  id: 'llc-frequency-ratio',
  title: 'Normalised frequency',
  subject: 'llc',
  meaning: 'Switching over resonant frequency: below 1 the tank raises the voltage, above 1 it lowers it.',
  expression: 'f_{n} = \\frac{f}{f_{0}}',
  output: { tex: 'f_{n}', dimension: 'ratio', meaning: 'switching over resonant frequency', unit: '1' },
  inputs: {
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    resonance: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
  },
  compute({ frequency, resonance }) {
    return frequency / resonance;
  },
  validity: ['The resonance must be above zero.'],
  source: { title: 'Definition', section: 'ratio of two values', standing: 'common practice' },
  examples: [
    { source: workedWith('bc'), inputs: { frequency: '121 kHz', resonance: '123.9 kHz' }, printed: '0.9766', kind: 'independent' },
  ],
});
