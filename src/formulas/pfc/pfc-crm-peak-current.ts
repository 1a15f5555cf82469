import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Highest peak of the inductor and switch current, at the crest of the mains. */
export const pfcCrmPeakCurrent = defineFormula({
  id: 'pfc-crm-peak-current',
  title: 'Peak inductor current of a critical-conduction PFC',
  subject: 'pfc',
  meaning: 'Highest peak of the inductor and switch current, at the crest of the mains.',
  expression: '\\hat{I}_{L} = \\frac{2\\sqrt{2}\\,P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}',
  output: { tex: '\\hat{I}_{L}', dimension: 'current', meaning: 'peak current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
  },
  compute({ power, rms }) {
    return (2 * Math.SQRT2 * power) / rms;
  },
  validity: ['Critical conduction, one phase; of two interleaved phases each carries half of the power.'],
  source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'eq. 7'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 9: one of two phases, 150 W at 92 %'),
      inputs: { power: '163.043 W', rms: '85 V' },
      printed: '5.4 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 7: 200 W at 95 %'),
      inputs: { power: '210.526 W', rms: '85 V' },
      printed: '7 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasInterleavedPfc, 'p. 27, eq. 27: 300 W at 92 %, 20 % above'),
      inputs: { power: '391.304 W', rms: '85 V' },
      printed: '13 A',
      kind: 'published',
    },
  ],
});
