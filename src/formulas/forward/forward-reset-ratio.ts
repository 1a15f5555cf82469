import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Primary turns over the turns of the winding that resets the core. */
export const forwardResetRatio = defineFormula({
  id: 'forward-reset-ratio',
  title: 'Ratio of the reset winding',
  subject: 'forward',
  meaning: 'Primary turns over the turns of the winding that resets the core.',
  expression: 'K = \\frac{N_{p}}{N_{r}}',
  output: { tex: 'K', dimension: 'ratio', meaning: 'primary turns over reset turns', unit: '1' },
  inputs: {
    primary: { tex: 'N_{p}', dimension: 'ratio', meaning: 'turns of the primary winding', unit: '1' },
    reset: { tex: 'N_{r}', dimension: 'ratio', meaning: 'turns of the reset winding', unit: '1' },
  },
  compute({ primary, reset }) {
    return primary / reset;
  },
  validity: ['Most are wound together with the primary and have its turns: a ratio of 1.'],
  source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8'),
  examples: [
    {
      source: cite(PUBLICATIONS.forwardTextbook, 'example 16.8, p. 1015: 1.5 stated, here as 3 to 2'),
      inputs: { primary: '3', reset: '2' },
      printed: '1.5',
      kind: 'published',
    },
  ],
});
