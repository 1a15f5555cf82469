import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the primary current with the magnetising current taken as a sine of the triangle’s peak and all divided by the efficiency. */
export const llcPrimaryCurrentConservative = defineFormula({
  id: 'llc-primary-current-conservative',
  title: 'Primary current of an LLC, with the loss counted in',
  subject: 'llc',
  meaning:
    'Rms of the primary current with the magnetising current taken as a sine of the triangle’s peak and all divided by the efficiency.',
  expression:
    'I_{r} = \\frac{1}{\\eta}\\sqrt{\\left(\\frac{\\pi I_{o}}{2\\sqrt{2}\\,n}\\right)^{2} + \\left(\\frac{n\\,V_{o}}{4\\sqrt{2}\\,f_{0}\\,M\\,L_{m}}\\right)^{2}}',
  output: { tex: 'I_{r}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    efficiency: { tex: '\\eta', dimension: 'ratio', meaning: 'efficiency', unit: '%' },
    current: { tex: 'I_{o}', dimension: 'current', meaning: 'output current', unit: 'A' },
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    frequency: { tex: 'f_{0}', dimension: 'frequency', meaning: 'resonant frequency', unit: 'kHz' },
    gain: { tex: 'M', dimension: 'ratio', meaning: 'voltage gain of the transformer’s own leakage', unit: '1' },
    inductance: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
  },
  compute({ efficiency, current, turnsRatio, output, frequency, gain, inductance }) {
    const load = (Math.PI * current) / (2 * Math.SQRT2 * turnsRatio);
    const magnetising = (turnsRatio * output) / (4 * Math.SQRT2 * frequency * gain * inductance);
    return Math.hypot(load, magnetising) / efficiency;
  },
  validity: ['Near resonance.'],
  remarks: ['Its magnetising term is 22 % above the exact triangle.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 23'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 23, p. 11, step 8'),
      inputs: {
        efficiency: '0.92',
        current: '8 A',
        turnsRatio: '9',
        output: '24.9 V',
        frequency: '99 kHz',
        gain: '1.11',
        inductance: '512 µH',
      },
      printed: '1.32 A',
      kind: 'published',
    },
  ],
});
