import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** A length read out of a photo beside a known one. */
export const photoLength = defineFormula({
  id: 'photo-length',
  title: 'Length in a photo',
  subject: 'geometry',
  meaning: 'A length between two marks in a photo, from a known length in the same picture.',
  expression: 'l = L\\,\\frac{d}{s}\\,k',
  output: { tex: 'l', dimension: 'length', meaning: 'length between the marks', unit: 'mm' },
  inputs: {
    reference: { tex: 'L', dimension: 'length', meaning: 'known length', unit: 'mm' },
    marked: { tex: 'd', dimension: 'ratio', meaning: 'distance of the marks in the picture, in pixels', unit: '1' },
    scale: { tex: 's', dimension: 'ratio', meaning: 'known length in the picture, in pixels', unit: '1' },
    tilt: { tex: 'k', dimension: 'ratio', meaning: 'factor for what stands aslant to the picture', unit: '1' },
  },
  compute({ reference, marked, scale, tilt }) {
    return scale > 0 ? reference * (marked / scale) * tilt : Number.NaN;
  },
  validity: [
    'Marks and known length lie in one plane across the line of sight. What lies nearer to the camera by one per cent of the distance looks one per cent longer.',
    'The known length is longer than nothing.',
  ],
  source: cite(PUBLICATIONS.elementaryGeometry, 'similar triangles'),
  examples: [
    {
      source: workedWith('bc: 30 mm over 301 pixels, 64 pixels marked, nothing aslant'),
      inputs: { reference: '30 mm', marked: '64', scale: '301', tilt: '1' },
      printed: '6.37874 mm',
      kind: 'independent',
    },
  ],
});
