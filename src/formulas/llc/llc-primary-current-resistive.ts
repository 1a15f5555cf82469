import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the primary current from the power over the fundamental of the half bridge, without the magnetising current. */
export const llcPrimaryCurrentResistive = defineFormula({
  id: 'llc-primary-current-resistive',
  title: 'Primary current of an LLC, tank taken as resistive',
  subject: 'llc',
  meaning: 'Rms of the primary current from the power over the fundamental of the half bridge, without the magnetising current.',
  expression: 'I_{r} = \\frac{\\pi\\,P_{\\mathrm{in}}}{\\sqrt{2}\\,V_{\\mathrm{in}}}',
  output: { tex: 'I_{r}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn', unit: 'W' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
  },
  compute({ power, input }) {
    return (Math.PI * power) / (Math.SQRT2 * input);
  },
  validity: ['At the lowest input, where the tank is nearly resistive; low by the magnetising current elsewhere.'],
  source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 11'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 11: 300 W at 96 %'),
      inputs: { power: '312.5 W', input: '337.2 V' },
      printed: '2.06 A',
      kind: 'published',
    },
  ],
});
