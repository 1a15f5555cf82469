import type { Finding } from '../diagnostics/finding.ts';
import type { Claim } from '../entry/entry.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'claims-differ',
  title: 'One thing is stated with two values',
  severity: 'warning',
  why: 'Both cannot be right, and a reader who has seen one of them will ask about the other.',
  advice:
    'Compare with the document: line, output, load or basis may differ and be missing here; else say in the text that it contradicts itself.',
  source: commonPractice('documents contradict themselves; values that meet within half of their last printed digits are one'),
};

export const claimsDiffer: Check = { ...RULE, check };

/** Each claim against those before it that are of the same thing under the same conditions. */
function check({ entry }: CheckInput): Finding[] {
  return entry.claims.flatMap((claim, index) => {
    const other = entry.claims.slice(0, index).find((earlier) => isSameThing(earlier, claim) && differ(earlier, claim));
    if (other === undefined) return [];
    const conditions = [claim.line, claim.output, claim.load, claim.port, claim.basis].filter((part) => part !== null);
    const under = conditions.length === 0 ? '' : ` (${conditions.join(', ')})`;
    const message = `${claim.of}${under}: ${stated(other)} and ${stated(claim)}.`;
    return [findingOf(RULE, atValue(...claim.path, 'value'), { message, subject: claim.of })];
  });
}

function isSameThing(one: Claim, other: Claim): boolean {
  const said = ({ of, basis, line, output, load, port }: Claim): string =>
    [of, basis, line, output, load, port].map((part) => (part ?? '').replaceAll(/\s+/gu, '').toLowerCase()).join('|');
  return said(one) === said(other);
}

/** Bounds ("< 60 mW") leave room on one side; two values differ where no number fits both. */
function differ({ quantity: one }: Claim, { quantity: other }: Claim): boolean {
  if (one === null || other === null || one.dimension !== other.dimension) return false;
  const [first, second] = [spanOf(one), spanOf(other)];
  return first.high < second.low || second.high < first.low;
}

function spanOf({ bound, nominal, low, high, resolution }: Quantity): { readonly low: number; readonly high: number } {
  const slack = resolution / 2 + Math.abs(nominal) * 1e-9;
  if (bound === 'at most' || bound === 'below') return { low: -Infinity, high: nominal + slack };
  if (bound === 'at least' || bound === 'above') return { low: nominal - slack, high: Infinity };
  return { low: (low ?? nominal) - slack, high: (high ?? nominal) + slack };
}

function stated({ written, where }: Claim): string {
  return where === null ? written : `${written} in ${where}`;
}
