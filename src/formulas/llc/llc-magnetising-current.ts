import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Rms of the fundamental of the magnetising current. */
export const llcMagnetisingCurrent = defineFormula({
  id: 'llc-magnetising-current',
  title: 'Magnetising current of an LLC, fundamental',
  subject: 'llc',
  meaning: 'Rms of the fundamental of the magnetising current.',
  expression: 'I_{m} = \\frac{2\\sqrt{2}}{\\pi}\\,\\frac{n\\,V_{o}}{2\\pi f\\,L_{m}}',
  output: { tex: 'I_{m}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    inductance: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
  },
  compute({ turnsRatio, output, frequency, inductance }) {
    return (((2 * Math.SQRT2) / Math.PI) * turnsRatio * output) / (2 * Math.PI * frequency * inductance);
  },
  validity: ['First-harmonic approximation.'],
  remarks: ['Three forms are in use: 0.1433 here, 0.1443 for the exact triangle, 0.1768 in AN-4151, each times n V / (f L).'],
  source: cite(PUBLICATIONS.texasResonant, 'design example, primary currents'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, lowest frequency'),
      inputs: { turnsRatio: '16', output: '12 V', frequency: '80.7 kHz', inductance: '210 µH' },
      printed: '1.63 A',
      kind: 'published',
      allowance: { fraction: 0.002, reason: 'the restated value is 0.4 % above what its own inputs give' },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 8'),
      inputs: { turnsRatio: '4', output: '48 V', frequency: '60.17 kHz', inductance: '65.391 µH' },
      printed: '6.992 A',
      kind: 'published',
    },
  ],
});
