import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Boost inductance for a wanted ripple at the crest of the mains. */
export const pfcCcmInductance = defineFormula({
  id: 'pfc-ccm-inductance',
  title: 'Inductance of a continuous-conduction PFC',
  subject: 'pfc',
  meaning: 'Boost inductance for a wanted ripple at the crest of the mains.',
  expression: 'L = \\frac{V_{\\mathrm{ac}}^{2}}{r\\,P_{o}\\,f}\\left(1 - \\frac{\\sqrt{2}\\,V_{\\mathrm{ac}}}{V_{o}}\\right)',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered by the stage', unit: 'W' },
    ripple: { tex: 'r', dimension: 'ratio', meaning: 'ripple, peak to peak, over the crest of the line current', unit: '%' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ rms, bus, power, ripple, frequency }) {
    return bus > Math.SQRT2 * rms ? (rms ** 2 / (ripple * power * frequency)) * (1 - (Math.SQRT2 * rms) / bus) : Number.NaN;
  },
  turningPoints({ bus }) {
    return { rms: (Math.SQRT2 * bus) / 3 };
  },
  validity: ['Continuous conduction.'],
  remarks: ['The source takes the efficiency as 1.'],
  source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 1'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonPfc, 'p. 5, eq. 1'),
      inputs: { rms: '85 V', bus: '400 V', power: '1200 W', ripple: '0.25', frequency: '100 kHz' },
      printed: '168.5 µH',
      kind: 'published',
    },
  ],
});
