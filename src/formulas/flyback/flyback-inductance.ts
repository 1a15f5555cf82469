import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Primary inductance for a wanted ripple factor at the lowest bulk voltage. */
export const flybackInductance = defineFormula({
  id: 'flyback-inductance',
  title: 'Primary inductance for a ripple',
  subject: 'flyback',
  meaning: 'Primary inductance for a wanted ripple factor at the lowest bulk voltage.',
  expression: 'L_{p} = \\frac{(V_{\\mathrm{in}}\\,D)^{2}}{2 P_{\\mathrm{in}}\\,f\\,K}',
  output: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    ripple: { tex: 'K', dimension: 'ratio', meaning: 'ripple factor: 1 is the boundary of continuous conduction', unit: '1' },
  },
  compute({ input, duty, power, frequency, ripple }) {
    return (input * duty) ** 2 / (2 * power * frequency * ripple);
  },
  validity: ['The ripple factor is at most 1.'],
  remarks: ['SLUS223F prints 1.8 mH for its example; its own voltage, duty, power and ripple of 10 % give 1.71 mH.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 7'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 7, appendix step 4, p. 13'),
      inputs: { input: '92.16 V', duty: '0.48', power: '67 W', frequency: '66 kHz', ripple: '0.33' },
      printed: '671 µH',
      kind: 'published',
    },
  ],
});
