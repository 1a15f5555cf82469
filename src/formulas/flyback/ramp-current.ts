import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rise of the current while a voltage stands across an inductance: the ripple, or the peak where it starts from zero. */
export const rampCurrent = defineFormula({
  id: 'ramp-current',
  title: 'Rise of a current in an inductance',
  subject: 'flyback',
  meaning: 'Rise of the current while a voltage stands across an inductance: the ripple, or the peak where it starts from zero.',
  expression: '\\Delta I = \\frac{V\\,D}{L\\,f}',
  output: { tex: '\\Delta I', dimension: 'current', meaning: 'rise of the current', unit: 'A' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage across the inductance', unit: 'V' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'share of the period', unit: '1' },
    inductance: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ voltage, duty, inductance, frequency }) {
    return (voltage * duty) / (inductance * frequency);
  },
  validity: ['Inductance that does not fall with the current.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 9'),
  examples: [
    {
      source: cite(PUBLICATIONS.maximFlyback, 'step 4'),
      inputs: { voltage: '17 V', duty: '0.42', inductance: '6.8 µH', frequency: '125 kHz' },
      printed: '8.4 A',
      kind: 'published',
    },
    {
      source: workedWith('Python, from AN-4137, appendix step 4'),
      inputs: { voltage: '92.16 V', duty: '0.48', inductance: '671 µH', frequency: '66 kHz' },
      printed: '0.99889 A',
      kind: 'independent',
    },
  ],
});
