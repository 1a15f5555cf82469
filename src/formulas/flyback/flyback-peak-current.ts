import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Peak of the primary current: the middle of the ramp and half of the ripple. */
export const flybackPeakCurrent = defineFormula({
  id: 'flyback-peak-current',
  title: 'Peak primary current in continuous conduction',
  subject: 'flyback',
  meaning: 'Peak of the primary current: the middle of the ramp and half of the ripple.',
  expression: '\\hat{I}_{p} = \\frac{P_{\\mathrm{in}}}{V_{\\mathrm{in}}\\,D} + \\frac{V_{\\mathrm{in}}\\,D}{2 L_{p}\\,f}',
  output: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    inductance: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ power, input, duty, inductance, frequency }) {
    return power / (input * duty) + (input * duty) / (2 * inductance * frequency);
  },
  turningPoints({ power, input, duty, inductance, frequency }) {
    return { input: Math.sqrt(2 * power * inductance * frequency) / duty, duty: Math.sqrt(2 * power * inductance * frequency) / input };
  },
  validity: ['Continuous conduction: the first term must be at least the second.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 8 to 10'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'appendix step 4, p. 13'),
      inputs: { power: '67 W', input: '92.16 V', duty: '0.48', inductance: '671 µH', frequency: '66 kHz' },
      printed: '2.01 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 28, appendix step 11, at 375 V: duty 85 / (375 + 85)'),
      inputs: { power: '67 W', input: '375 V', duty: '0.184783', inductance: '671 µH', frequency: '66 kHz' },
      printed: '1.75 A',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.3, eq. 18: duty 120 / 195'),
      inputs: { power: '56.4706 W', input: '75 V', duty: '0.615385', inductance: '1.5 mH', frequency: '110 kHz' },
      printed: '1.36 A',
      kind: 'published',
    },
  ],
});
