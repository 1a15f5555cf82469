import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'ripple-bandwidth',
  title: 'Ripple without its bandwidth',
  severity: 'note',
  why: 'The same output shows several times the ripple at full bandwidth that it shows at 20 MHz: without the bandwidth a figure compares with no other.',
  advice: 'Add the bandwidth: { value: 38 mV, output: 5 V, bandwidth: 20 MHz }.',
  source: { title: 'Common practice', section: 'ripple and noise is stated with 20 MHz', standing: 'common practice' },
};

export const rippleBandwidth: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.measurements
    .filter(
      ({ subject, value, conditions }) => subject === 'ripple' && value.evidence === 'measured' && conditions['bandwidth'] === undefined,
    )
    .map(({ value }) =>
      findingOf(RULE, atValue(...value.path), { message: `Ripple of ${value.quantity.written} is given without a bandwidth.` }),
    );
}
