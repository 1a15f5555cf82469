import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Rms over the mains cycle in each device of either leg of a totem-pole PFC. */
export const totemPoleLegRms = defineFormula({
  id: 'totem-pole-leg-rms',
  title: 'Rms current of a totem-pole device',
  subject: 'pfc',
  meaning: 'Rms over the mains cycle in each device of either leg of a totem-pole PFC.',
  expression: 'I = \\frac{P_{\\mathrm{in}}}{\\sqrt{2}\\,V_{\\mathrm{ac}}}',
  output: { tex: 'I', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
  },
  compute({ power, rms }) {
    return power / (Math.SQRT2 * rms);
  },
  validity: ['Continuous conduction, ripple left out; unity power factor.'],
  remarks: ['Derived, not published: ripple apart it holds exactly for the fast and for the slow leg.'],
  source: workedWith('derivation: over a full cycle each device of the fast leg carries D in one half and 1 − D in the other'),
  examples: [
    {
      source: workedWith('numerical integration over the mains cycle, 300 W at 90 V'),
      inputs: { power: '300 W', rms: '90 V' },
      printed: '2.35702 A',
      kind: 'independent',
    },
  ],
});
