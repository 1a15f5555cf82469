import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Peak of the primary current: the middle of the ramp and half of the ripple; where the ramp falls to zero, what stores the power. */
export const flybackPeakCurrent = defineFormula({
  id: 'flyback-peak-current',
  title: 'Peak primary current in continuous conduction',
  subject: 'flyback',
  meaning:
    'Peak of the primary current: the middle of the ramp and half of the ripple; where the ramp falls to zero, what stores the power.',
  expression:
    '\\hat{I}_{p} = \\begin{cases} \\frac{P_{\\mathrm{in}}}{V_{\\mathrm{in}}\\,D} + \\frac{V_{\\mathrm{in}}\\,D}{2 L_{p}\\,f} & \\text{continuous} \\\\ \\sqrt{\\frac{2 P_{\\mathrm{in}}}{L_{p}\\,f}} & \\text{else} \\end{cases}',
  output: { tex: '\\hat{I}_{p}', dimension: 'current', meaning: 'peak primary current', unit: 'A' },
  inputs: {
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn: output power over efficiency', unit: 'W' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
    inductance: { tex: 'L_{p}', dimension: 'inductance', meaning: 'primary inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ power, input, duty, inductance, frequency }) {
    const middle = power / (input * duty);
    const half = (input * duty) / (2 * inductance * frequency);
    return middle >= half ? middle + half : Math.sqrt((2 * power) / (inductance * frequency));
  },
  validity: ['Fixed frequency. Where the first term is less than the second, the current is discontinuous at that load.'],
  remarks: ['A converter that is continuous at full load is not at a light one; the two forms meet at the boundary.'],
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
    {
      source: workedWith('bc: 5 W at 200 V, where the ramp of 0.903 A starts from zero'),
      inputs: { power: '5 W', input: '200 V', duty: '0.2', inductance: '671 µH', frequency: '66 kHz' },
      printed: '0.4752 A',
      kind: 'independent',
    },
  ],
});
