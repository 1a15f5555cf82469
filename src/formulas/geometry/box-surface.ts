import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Outer surface of a box, all six faces. */
export const boxSurface = defineFormula({
  id: 'box-surface',
  title: 'Surface of a box',
  subject: 'geometry',
  meaning: 'Outer surface of a box, all six faces.',
  expression: 'A = 2\\,(a\\,b + a\\,h + b\\,h)',
  output: { tex: 'A', dimension: 'area', meaning: 'surface', unit: 'cm²' },
  inputs: {
    length: { tex: 'a', dimension: 'length', meaning: 'length', unit: 'mm' },
    width: { tex: 'b', dimension: 'length', meaning: 'width', unit: 'mm' },
    height: { tex: 'h', dimension: 'length', meaning: 'height', unit: 'mm' },
  },
  compute({ length, width, height }) {
    return 2 * (length * width + length * height + width * height);
  },
  validity: ['Plane faces; pins and rounding left out.'],
  source: cite(PUBLICATIONS.enclosureHeatGuide, 'worked example'),
  examples: [
    {
      source: cite(PUBLICATIONS.enclosureHeatGuide, 'worked example'),
      inputs: { length: '48 in', width: '36 in', height: '16 in' },
      printed: '42 ft²',
      kind: 'published',
      allowance: { fraction: 0.0045, reason: 'the source cuts 42.67 off' },
    },
    { source: workedWith('bc'), inputs: { length: '60 mm', width: '60 mm', height: '30 mm' }, printed: '144.0 cm²', kind: 'independent' },
  ],
});
