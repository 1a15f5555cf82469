import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Rms of the triangular magnetising current at resonance. */
export const llcMagnetisingCurrentTriangle = defineFormula({
  id: 'llc-magnetising-current-triangle',
  title: 'Magnetising current of an LLC, triangle',
  subject: 'llc',
  meaning: 'Rms of the triangular magnetising current at resonance.',
  expression: 'I_{m} = \\frac{n\\,V_{o}}{4\\sqrt{3}\\,f\\,L_{m}}',
  output: { tex: 'I_{m}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
    inductance: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
  },
  compute({ turnsRatio, output, frequency, inductance }) {
    return (turnsRatio * output) / (4 * Math.sqrt(3) * frequency * inductance);
  },
  validity: ['At resonance, where the output clamps the winding for the whole half period.'],
  remarks: ['AN-4151, eq. 23, is 22 % above this exact triangle.'],
  source: workedWith('integration of the triangle'),
  examples: [
    {
      source: workedWith('numerical integration of the triangle'),
      inputs: { turnsRatio: '9', output: '24.9 V', frequency: '99 kHz', inductance: '568.32 µH' },
      printed: '0.5749 A',
      kind: 'independent',
    },
  ],
});
