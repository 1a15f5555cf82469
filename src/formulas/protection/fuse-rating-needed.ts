import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Least rated current of a fuse for a continuous current. */
export const fuseRatingNeeded = defineFormula({
  id: 'fuse-rating-needed',
  title: 'Fuse rating for a current',
  subject: 'protection',
  meaning: 'Least rated current of a fuse for a continuous current.',
  expression: 'I_{n} = \\frac{I}{k}',
  output: { tex: 'I_{n}', dimension: 'current', meaning: 'rated current needed', unit: 'A' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'continuous current, rms', unit: 'A' },
    share: {
      tex: 'k',
      dimension: 'ratio',
      meaning: 'share of its rating that the fuse may carry: 0.75 for UL 248-14, 1 for IEC 60127',
      unit: '1',
    },
  },
  compute({ current, share }) {
    return current / share;
  },
  validity: ['At 25 °C; a hot case takes more off.'],
  remarks: ['The rule was read; the example numbers that go round with it were not.'],
  source: cite(PUBLICATIONS.fuseChecklist, 'ampere rating'),
  examples: [{ source: workedWith('bc: 0.75 A'), inputs: { current: '0.75 A', share: '0.75' }, printed: '1.000 A', kind: 'independent' }],
});
