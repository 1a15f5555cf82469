import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Capacitance for a wanted ripple behind one diode. */
export const halfWaveCapacitance = defineFormula({
  id: 'half-wave-capacitance',
  title: 'Capacitance of a half-wave peak rectifier',
  subject: 'bulk',
  meaning: 'Capacitance for a wanted ripple behind one diode.',
  expression: 'C = \\frac{V_{p}}{V_{r}\\,f\\,R}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
  inputs: {
    crest: { tex: 'V_{p}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
    ripple: { tex: 'V_{r}', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'supply frequency', unit: 'Hz' },
    resistance: { tex: 'R', dimension: 'resistance', meaning: 'load resistance', unit: 'kΩ' },
  },
  compute({ crest, ripple, frequency, resistance }) {
    return crest / (ripple * frequency * resistance);
  },
  validity: ['Half-wave rectifier; a bridge needs half.'],
  source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
  examples: [
    {
      source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
      inputs: { crest: '100 V', ripple: '2 V', frequency: '60 Hz', resistance: '10 kΩ' },
      printed: '83.3 µF',
      kind: 'published',
    },
  ],
});
