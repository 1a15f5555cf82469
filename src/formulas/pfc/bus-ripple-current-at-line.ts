import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the current at twice the line frequency in the bus capacitor. */
export const busRippleCurrentAtLine = defineFormula({
  id: 'bus-ripple-current-at-line',
  title: 'Line-frequency ripple current of the bus capacitor',
  subject: 'pfc',
  meaning: 'Rms of the current at twice the line frequency in the bus capacitor.',
  expression: 'I_{2L} = \\frac{P_{o}}{\\sqrt{2}\\,V_{o}}',
  output: { tex: 'I_{2L}', dimension: 'current', meaning: 'rms current at twice the line frequency', unit: 'A' },
  inputs: {
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, bus }) {
    return power / (Math.SQRT2 * bus);
  },
  validity: ['Unity power factor; the stage behind draws a steady current.'],
  source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 24'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 24: 300 W over its 92 %'),
      inputs: { power: '326.087 W', bus: '390 V' },
      printed: '0.591 A',
      kind: 'published',
    },
  ],
});
