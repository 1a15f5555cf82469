import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms over the mains cycle of the current in the boost diode. */
export const pfcCcmDiodeRms = defineFormula({
  id: 'pfc-ccm-diode-rms',
  title: 'Diode rms current of a continuous-conduction PFC',
  subject: 'pfc',
  meaning: 'Rms over the mains cycle of the current in the boost diode.',
  expression: 'I_{D} = \\frac{P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}\\sqrt{\\frac{8\\sqrt{2}\\,V_{\\mathrm{ac}}}{3\\pi\\,V_{o}}}',
  output: { tex: 'I_{D}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
  },
  compute({ power, rms, bus }) {
    return bus > Math.SQRT2 * rms ? (power / rms) * Math.sqrt((8 * Math.SQRT2 * rms) / (3 * Math.PI * bus)) : Number.NaN;
  },
  validity: ['Continuous conduction, ripple left out.', 'The bus must lie above the crest of the mains.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 15, eq. 33, its first term'),
  examples: [
    {
      source: workedWith('numerical integration over the mains cycle'),
      inputs: { power: '382.9787 W', rms: '85 V', bus: '390 V' },
      printed: '2.30462 A',
      kind: 'independent',
    },
  ],
});
