import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Volume of the smallest box around a device, from its three edges. */
export const boxVolume = defineFormula({
  id: 'box-volume',
  title: 'Volume of a box',
  subject: 'geometry',
  meaning: 'Volume of the smallest box around a device, from its three edges.',
  expression: 'V = l\\,w\\,h',
  output: { tex: 'V', dimension: 'volume', meaning: 'volume', unit: 'cm³' },
  inputs: {
    length: { tex: 'l', dimension: 'length', meaning: 'first edge', unit: 'mm' },
    width: { tex: 'w', dimension: 'length', meaning: 'second edge', unit: 'mm' },
    height: { tex: 'h', dimension: 'length', meaning: 'third edge', unit: 'mm' },
  },
  compute({ length, width, height }) {
    return length * width * height;
  },
  validity: ['Rounded corners make the true volume smaller than the box.'],
  source: cite(PUBLICATIONS.elementaryGeometry, 'volume of a cuboid'),
  examples: [
    {
      source: cite(PUBLICATIONS.silanna65W, 'form factor: 33.9 × 30.4 × 34.5 mm, 2.17 in³'),
      inputs: { length: '33.9 mm', width: '30.4 mm', height: '34.5 mm' },
      printed: '2.17 in³',
      kind: 'published',
    },
    {
      source: workedWith('bc, from the edges that TIDA-01622 prints on its front page'),
      inputs: { length: '62 mm', width: '26.8 mm', height: '20 mm' },
      printed: '33.232 cm³',
      kind: 'independent',
    },
  ],
});
