import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Turns ratio of the ideal transformer behind a choke of its own that is the same as a transformer whose leakage resonates. */
export const llcEquivalentTurnsRatio = defineFormula({
  id: 'llc-equivalent-turns-ratio',
  title: 'Equivalent turns ratio of a transformer whose leakage resonates',
  subject: 'llc',
  meaning: 'Turns ratio of the ideal transformer behind a choke of its own that is the same as a transformer whose leakage resonates.',
  expression: "n' = \\frac{n}{M_{0}}",
  output: { tex: "n'", dimension: 'ratio', meaning: 'equivalent primary over secondary turns', unit: '1' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    gain: { tex: 'M_{0}', dimension: 'ratio', meaning: 'gain at resonance of the transformer’s own leakage', unit: '1' },
  },
  compute({ turnsRatio, gain }) {
    return turnsRatio / gain;
  },
  validity: ['Leakage shared equally by both sides, seen from the primary.'],
  remarks: ['By it currents in the primary keep the balance of power: without it they come out 10 % low for a gain of 1.1.'],
  source: workedWith('theory of two-ports: the T of two leakages and the magnetising inductance is a series and a parallel inductance'),
  examples: [
    {
      source: workedWith('Python, by the chain matrix of two leakages of 62.06 µH and 567.94 µH between them: 630 µH open, 118 µH shorted'),
      inputs: { turnsRatio: '9', gain: '1.10926' },
      printed: '8.114',
      kind: 'independent',
    },
  ],
});
