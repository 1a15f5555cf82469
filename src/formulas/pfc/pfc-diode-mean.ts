import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean current of the diode of a boost PFC: the current of the bus. */
export const pfcDiodeMean = defineFormula({
  id: 'pfc-diode-mean',
  title: 'Mean current of a boost diode',
  subject: 'pfc',
  meaning: 'Mean current of the diode of a boost PFC: the current of the bus.',
  expression: '\\bar{I}_{D} = \\frac{P_{o}}{V_{o}}',
  output: { tex: '\\bar{I}_{D}', dimension: 'current', meaning: 'mean current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, bus }) {
    return power / bus;
  },
  validity: ['The mean over a whole mains cycle.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 26'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 26'),
      inputs: { power: '1200 W', bus: '400 V' },
      printed: '3 A',
      kind: 'published',
    },
  ],
});
