import { defineFormula } from '../../values/define-formula.ts';

/** Current that a part carries over the current it is rated for. */
export const currentStressRatio = defineFormula({
  id: 'current-stress-ratio',
  title: 'Current stress ratio',
  subject: 'stress',
  meaning: 'Current that a part carries over the current it is rated for.',
  expression: 'r = \\frac{I}{I_{\\mathrm{rated}}}',
  output: { tex: 'r', dimension: 'ratio', meaning: 'stress ratio', unit: '%' },
  inputs: {
    stress: { tex: 'I', dimension: 'current', meaning: 'current that the part carries', unit: 'A' },
    rating: { tex: 'I_{\\mathrm{rated}}', dimension: 'current', meaning: 'rated current', unit: 'A' },
  },
  compute({ stress, rating }) {
    return stress / rating;
  },
  validity: ['The rating must be above zero.'],
  source: { title: 'Definition', section: 'stress over rating', standing: 'common practice' },
  examples: [
    {
      source: {
        title: 'L. Lundy, The fuse-selection checklist, EDN, 26 September 1996',
        section: 'ampere rating: 0.75 A on a 1 A fuse',
        standing: 'read',
      },
      inputs: { stress: '0.75 A', rating: '1 A' },
      printed: '75 %',
      kind: 'published',
    },
  ],
});
