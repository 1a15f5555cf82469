import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Mean of the rectified line current with a PFC stage behind the bridge. */
export const bridgeMeanCurrent = defineFormula({
  id: 'bridge-mean-current',
  title: 'Mean bridge current with PFC',
  subject: 'pfc',
  meaning: 'Mean of the rectified line current with a PFC stage behind the bridge.',
  expression: '\\bar{I} = \\frac{2\\sqrt{2}}{\\pi}\\,\\frac{P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}',
  output: { tex: '\\bar{I}', dimension: 'current', meaning: 'mean current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
  },
  compute({ power, rms }) {
    return ((2 * Math.SQRT2) / Math.PI) * (power / rms);
  },
  validity: ['Unity power factor.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 7, eq. 14'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 7, eq. 14'),
      inputs: { power: '1200 W', rms: '85 V' },
      printed: '12.71 A',
      kind: 'published',
    },
  ],
});
