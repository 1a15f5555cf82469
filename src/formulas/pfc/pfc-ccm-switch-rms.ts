import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms over the mains cycle of the current in the switch. */
export const pfcCcmSwitchRms = defineFormula({
  id: 'pfc-ccm-switch-rms',
  title: 'Switch rms current of a continuous-conduction PFC',
  subject: 'pfc',
  meaning: 'Rms over the mains cycle of the current in the switch.',
  expression: 'I_{S} = \\frac{P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}\\sqrt{1 - \\frac{8\\sqrt{2}\\,V_{\\mathrm{ac}}}{3\\pi\\,V_{o}}}',
  output: { tex: 'I_{S}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, rms, bus }) {
    return bus > Math.SQRT2 * rms ? (power / rms) * Math.sqrt(1 - (8 * Math.SQRT2 * rms) / (3 * Math.PI * bus)) : Number.NaN;
  },
  validity: ['Continuous conduction, ripple left out.', 'The bus must lie above the crest of the mains.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 12, eq. 16'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 12, eq. 16'),
      inputs: { power: '1200 W', rms: '85 V', bus: '400 V' },
      printed: '12.2 A',
      kind: 'published',
    },
    {
      source: workedWith('numerical integration over the mains cycle'),
      inputs: { power: '382.9787 W', rms: '85 V', bus: '390 V' },
      printed: '3.87162 A',
      kind: 'independent',
    },
  ],
});
