import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** What the tank itself has to add where the leakage of the transformer gives a gain at resonance. */
export const llcTankGain = defineFormula({
  id: 'llc-tank-gain',
  title: 'Gain that is left to the tank',
  subject: 'llc',
  meaning: 'What the tank itself has to add where the leakage of the transformer gives a gain at resonance.',
  expression: 'M_{t} = \\frac{M}{M_{0}}',
  output: { tex: 'M_{t}', dimension: 'ratio', meaning: 'gain of the equivalent tank', unit: '1' },
  inputs: {
    gain: { tex: 'M', dimension: 'ratio', meaning: 'gain by the turns ratio', unit: '1' },
    transformer: { tex: 'M_{0}', dimension: 'ratio', meaning: 'gain at resonance of the transformer’s own leakage', unit: '1' },
  },
  compute({ gain, transformer }) {
    return gain / transformer;
  },
  validity: ['First-harmonic approximation.'],
  source: workedWith('the product turned round'),
  examples: [
    {
      source: workedWith('bc: the largest gain of AN-4151 over its gain at resonance'),
      inputs: { gain: '1.28', transformer: '1.12' },
      printed: '1.1429',
      kind: 'independent',
    },
  ],
});
