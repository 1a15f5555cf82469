import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Gain from half of the bus to the reflected output, with the gain that the leakage of the transformer adds. */
export const llcGainWithTransformer = defineFormula({
  id: 'llc-gain-with-transformer',
  title: 'Gain of an LLC with the leakage as resonant inductance',
  subject: 'llc',
  meaning: 'Gain from half of the bus to the reflected output, with the gain that the leakage of the transformer adds.',
  expression: 'M = M_{0}\\,M_{t}',
  output: { tex: 'M', dimension: 'ratio', meaning: 'gain by the turns ratio', unit: '1' },
  inputs: {
    transformer: { tex: 'M_{0}', dimension: 'ratio', meaning: 'gain at resonance of the transformer’s own leakage', unit: '1' },
    tank: { tex: 'M_{t}', dimension: 'ratio', meaning: 'gain of the equivalent tank', unit: '1' },
  },
  compute({ transformer, tank }) {
    return transformer * tank;
  },
  validity: ['First-harmonic approximation; the equivalent tank sees the load through the equivalent turns ratio.'],
  source: workedWith('theory of two-ports'),
  examples: [
    {
      source: workedWith('Python, by the chain matrix of the transformer of AN-4151 with 22 nF before it and 197 Ω behind it, at 80 kHz'),
      inputs: { transformer: '1.10926', tank: '1.11070' },
      printed: '1.2321',
      kind: 'independent',
    },
  ],
});
