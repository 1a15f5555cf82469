import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Primary turns over secondary turns of a transformer. */
export const turnsRatio = defineFormula({
  id: 'turns-ratio',
  title: 'Turns ratio',
  subject: 'flyback',
  meaning: 'Primary turns over secondary turns of a transformer.',
  expression: 'n = \\frac{N_{p}}{N_{s}}',
  output: { tex: 'n', dimension: 'ratio', meaning: 'turns ratio', unit: '1' },
  inputs: {
    primary: { tex: 'N_{p}', dimension: 'ratio', meaning: 'turns of the primary winding', unit: '1' },
    secondary: { tex: 'N_{s}', dimension: 'ratio', meaning: 'turns of the secondary winding', unit: '1' },
  },
  compute({ primary, secondary }) {
    return primary / secondary;
  },
  validity: ['Some papers give the inverse.', 'The secondary must have at least a part of a turn.'],
  source: { title: 'Definition', section: 'ratio of turns', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, from the 22:4 turns on the TIDA-01622 schematic'),
      inputs: { primary: '22', secondary: '4' },
      printed: '5.5',
      kind: 'independent',
    },
  ],
});
