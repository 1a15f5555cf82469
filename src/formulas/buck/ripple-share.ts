import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Ripple of an inductor as a share of its mean current. */
export const rippleShare = defineFormula({
  id: 'ripple-share',
  title: 'Ripple over mean current',
  subject: 'buck',
  meaning: 'Ripple of an inductor as a share of its mean current.',
  expression: 'r = \\frac{\\Delta I}{I}',
  output: { tex: 'r', dimension: 'ratio', meaning: 'ripple over mean', unit: '%' },
  inputs: {
    ripple: { tex: '\\Delta I', dimension: 'current', meaning: 'ripple of the inductor current, peak to peak', unit: 'A' },
    current: { tex: 'I', dimension: 'current', meaning: 'mean current', unit: 'A' },
  },
  compute({ ripple, current }) {
    return ripple / current;
  },
  validity: ['The mean current must be above zero.'],
  source: cite(PUBLICATIONS.linearBuckBoost3789, 'p. 23'),
  examples: [
    {
      source: cite(PUBLICATIONS.linearBuckBoost3789, 'p. 23, step down, 5 A'),
      inputs: { ripple: '1.4706 A', current: '5 A' },
      printed: '0.29',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.linearBuckBoost3789, 'p. 23, step up, 10 A in'),
      inputs: { ripple: '1.1029 A', current: '10 A' },
      printed: '0.11',
      kind: 'published',
    },
    { source: workedWith('bc'), inputs: { ripple: '1.4706 A', current: '5 A' }, printed: '0.2941', kind: 'independent' },
  ],
});
