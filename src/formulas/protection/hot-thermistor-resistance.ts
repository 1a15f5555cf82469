import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Resistance of inrush limiters in series that start warm. */
export const hotThermistorResistance = defineFormula({
  id: 'hot-thermistor-resistance',
  title: 'Thermistors in a warm place',
  subject: 'protection',
  meaning: 'Resistance of inrush limiters in series that start warm.',
  expression: 'R = n\\,k\\,R_{25}',
  output: { tex: 'R', dimension: 'resistance', meaning: 'resistance', unit: 'Ω' },
  inputs: {
    count: { tex: 'n', dimension: 'ratio', meaning: 'number in series', unit: '1' },
    factor: { tex: 'k', dimension: 'ratio', meaning: 'resistance when warm over that at 25 °C', unit: '1' },
    resistance: { tex: 'R_{25}', dimension: 'resistance', meaning: 'resistance of one at 25 °C', unit: 'Ω' },
  },
  compute({ count, factor, resistance }) {
    return count * factor * resistance;
  },
  validity: ['The factor is the maker’s curve.'],
  source: cite(PUBLICATIONS.amethermInrush, 'worked example'),
  examples: [
    {
      source: cite(PUBLICATIONS.amethermInrush, 'worked example: three at 85 °C'),
      inputs: { count: '3', factor: '0.75', resistance: '17.16 Ω' },
      printed: '38.61 Ω',
      kind: 'published',
    },
  ],
});
