import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms over the mains cycle of the current in the switch. */
export const pfcCrmSwitchRms = defineFormula({
  id: 'pfc-crm-switch-rms',
  title: 'Switch rms current of a critical-conduction PFC',
  subject: 'pfc',
  meaning: 'Rms over the mains cycle of the current in the switch.',
  expression: 'I_{S} = \\hat{I}_{L}\\sqrt{\\frac{1}{6} - \\frac{4\\sqrt{2}\\,V_{\\mathrm{ac}}}{9\\pi\\,V_{o}}}',
  output: { tex: 'I_{S}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    peak: { tex: '\\hat{I}_{L}', dimension: 'current', meaning: 'peak current at the crest', unit: 'A' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ peak, rms, bus }) {
    return bus > Math.SQRT2 * rms ? peak * Math.sqrt(1 / 6 - (4 * Math.SQRT2 * rms) / (9 * Math.PI * bus)) : Number.NaN;
  },
  validity: ['Critical conduction.', 'The bus must lie above the crest of the mains.'],
  source: cite(PUBLICATIONS.texasTransitionPfcAnalysis, 'p. 12, eq. 4'),
  examples: [
    {
      source: workedWith('numerical integration over the mains cycle'),
      inputs: { peak: '5.425 A', rms: '85 V', bus: '390 V' },
      printed: '1.9031 A',
      kind: 'independent',
    },
  ],
});
