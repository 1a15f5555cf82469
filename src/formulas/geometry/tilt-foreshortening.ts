import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** How much shorter a line looks that stands aslant to the picture. */
export const tiltForeshortening = defineFormula({
  id: 'tilt-foreshortening',
  title: 'Foreshortening by tilt',
  subject: 'geometry',
  meaning: 'How long a line looks that rises towards the camera, over its true length: the cosine of its tilt.',
  expression: 'c = \\frac{1}{\\sqrt{1 + m^2}}',
  output: { tex: 'c', dimension: 'ratio', meaning: 'seen length over true length', unit: '1' },
  inputs: { slope: { tex: 'm', dimension: 'ratio', meaning: 'rise over run, the tangent of the tilt', unit: '1' } },
  compute({ slope }) {
    return 1 / Math.sqrt(1 + slope * slope);
  },
  validity: ['Seen from far away beside its length; perspective left out.'],
  source: cite(PUBLICATIONS.elementaryGeometry, 'theorem of Pythagoras'),
  examples: [
    {
      source: cite(PUBLICATIONS.elementaryGeometry, 'right triangle of 3, 4 and 5'),
      inputs: { slope: '0.75' },
      printed: '0.80',
      kind: 'published',
    },
    { source: workedWith('bc: cosine of the arc tangent of 0.1'), inputs: { slope: '0.1' }, printed: '0.9950372', kind: 'independent' },
  ],
});
