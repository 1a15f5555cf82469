import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Share of the switching period in which the switch of a boost PFC is on, at the crest of the mains. */
export const pfcDuty = defineFormula({
  id: 'pfc-duty',
  title: 'Duty of a boost PFC at the crest',
  subject: 'pfc',
  meaning: 'Share of the switching period in which the switch of a boost PFC is on, at the crest of the mains.',
  expression: 'D = \\frac{V_{o} - \\sqrt{2}\\,V_{\\mathrm{ac}}}{V_{o}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty at the crest', unit: '1' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ rms, bus }) {
    return bus > Math.SQRT2 * rms ? (bus - Math.SQRT2 * rms) / bus : Number.NaN;
  },
  validity: ['The bus must lie above the crest of the mains.'],
  source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 7'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 7'),
      inputs: { rms: '85 V', bus: '390 V' },
      printed: '0.69',
      kind: 'published',
    },
  ],
});
