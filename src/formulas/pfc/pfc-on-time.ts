import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** On-time of the switch, constant over the half cycle. */
export const pfcOnTime = defineFormula({
  id: 'pfc-on-time',
  title: 'On-time of a critical-conduction PFC',
  subject: 'pfc',
  meaning: 'On-time of the switch, constant over the half cycle.',
  expression: 't_{\\mathrm{on}} = \\frac{2 P_{\\mathrm{in}}\\,L}{V_{\\mathrm{ac}}^{2}}',
  output: { tex: 't_{\\mathrm{on}}', dimension: 'time', meaning: 'on-time', unit: 'µs' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
  },
  compute({ power, inductance, rms }) {
    return (2 * power * inductance) / rms ** 2;
  },
  validity: ['Critical conduction.'],
  source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'eq. 19'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 19: 200 W at 95 %, 20 % above'),
      inputs: { power: '252.632 W', inductance: '202 µH', rms: '85 V' },
      printed: '14.1 µs',
      kind: 'published',
    },
  ],
});
