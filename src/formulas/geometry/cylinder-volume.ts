import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Volume of a round device from its diameter and its height. */
export const cylinderVolume = defineFormula({
  id: 'cylinder-volume',
  title: 'Volume of a cylinder',
  subject: 'geometry',
  meaning: 'Volume of a round device from its diameter and its height.',
  expression: 'V = \\tfrac{\\pi}{4}\\,d^{2}\\,h',
  output: { tex: 'V', dimension: 'volume', meaning: 'volume', unit: 'cm³' },
  inputs: {
    diameter: { tex: 'd', dimension: 'length', meaning: 'diameter', unit: 'mm' },
    height: { tex: 'h', dimension: 'length', meaning: 'height', unit: 'mm' },
  },
  compute({ diameter, height }) {
    return (Math.PI / 4) * diameter ** 2 * height;
  },
  validity: [],
  source: cite(PUBLICATIONS.elementaryGeometry, 'volume of a right circular cylinder'),
  examples: [
    {
      source: workedWith('bc'),
      inputs: { diameter: '18 mm', height: '25 mm' },
      printed: '6.3617 cm³',
      kind: 'independent',
    },
  ],
});
