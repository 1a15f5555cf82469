import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Inductor current at turn-on, at the crest of the mains. */
export const pfcCcmValleyCurrent = defineFormula({
  id: 'pfc-ccm-valley-current',
  title: 'Valley inductor current of a continuous-conduction PFC',
  subject: 'pfc',
  meaning: 'Inductor current at turn-on, at the crest of the mains.',
  expression: 'I_{\\mathrm{valley}} = \\frac{\\sqrt{2}\\,P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}\\left(1 - \\frac{r}{2}\\right)',
  output: { tex: 'I_{\\mathrm{valley}}', dimension: 'current', meaning: 'valley current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    ripple: { tex: 'r', dimension: 'ratio', meaning: 'ripple, peak to peak, over the crest of the line current', unit: '%' },
  },
  compute({ power, rms, ripple }) {
    return ((Math.SQRT2 * power) / rms) * (1 - ripple / 2);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 3'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 3'),
      inputs: { power: '1200 W', rms: '85 V', ripple: '0.25' },
      printed: '17.42 A',
      kind: 'published',
      allowance: { fraction: 0.003, reason: 'the source prints 17.42 A; its own numbers give 17.47 A' },
    },
  ],
});
