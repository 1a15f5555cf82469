import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Highest inductor and switch current: crest of the line current and half of the ripple. */
export const pfcCcmPeakCurrent = defineFormula({
  id: 'pfc-ccm-peak-current',
  title: 'Peak inductor current of a continuous-conduction PFC',
  subject: 'pfc',
  meaning: 'Highest inductor and switch current: crest of the line current and half of the ripple.',
  expression: '\\hat{I}_{L} = \\frac{\\sqrt{2}\\,P_{\\mathrm{in}}}{V_{\\mathrm{ac}}}\\left(1 + \\frac{r}{2}\\right)',
  output: { tex: '\\hat{I}_{L}', dimension: 'current', meaning: 'peak current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    ripple: { tex: 'r', dimension: 'ratio', meaning: 'ripple, peak to peak, over the crest of the line current', unit: '%' },
  },
  compute({ power, rms, ripple }) {
    return ((Math.SQRT2 * power) / rms) * (1 + ripple / 2);
  },
  validity: ['Continuous conduction.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 3'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 3'),
      inputs: { power: '1200 W', rms: '85 V', ripple: '0.25' },
      printed: '22.5 A',
      kind: 'published',
    },
  ],
});
