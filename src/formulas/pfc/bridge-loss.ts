import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Heat in a bridge of which two diodes conduct at any time. */
export const bridgeLoss = defineFormula({
  id: 'bridge-loss',
  title: 'Loss of a bridge',
  subject: 'pfc',
  meaning: 'Heat in a bridge of which two diodes conduct at any time.',
  expression: 'P = 2\\,\\bar{I}\\,V_{F}',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    current: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean of the rectified current', unit: 'A' },
    drop: { tex: 'V_{F}', dimension: 'voltage', meaning: 'drop of one diode', unit: 'V' },
  },
  compute({ current, drop }) {
    return 2 * current * drop;
  },
  validity: ['Two diodes in the path at any time.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 7, eq. 15'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 7, eq. 15'),
      inputs: { current: '12.71 A', drop: '1 V' },
      printed: '25.4 W',
      kind: 'published',
    },
  ],
});
