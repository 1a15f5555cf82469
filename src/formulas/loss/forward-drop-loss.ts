import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Heat from a mean current through a constant drop. */
export const forwardDropLoss = defineFormula({
  id: 'forward-drop-loss',
  title: 'Loss of a forward drop',
  subject: 'loss',
  meaning: 'Heat from a mean current through a constant drop.',
  expression: 'P = \\bar{I}\\,V_{F}',
  output: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    current: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean current', unit: 'A' },
    drop: { tex: 'V_{F}', dimension: 'voltage', meaning: 'forward drop', unit: 'V' },
  },
  compute({ current, drop }) {
    return current * drop;
  },
  validity: ['The drop at the working current and temperature.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 27'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 27'),
      inputs: { current: '3 A', drop: '1.5 V' },
      printed: '4.5 W',
      kind: 'published',
    },
    { source: workedWith('bc'), inputs: { current: '3 A', drop: '1.5 V' }, printed: '4.500 W', kind: 'independent' },
  ],
});
