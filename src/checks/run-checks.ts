import type { Finding } from '../diagnostics/finding.ts';
import type { CheckInput } from './check.ts';
import { CHECKS } from './index.ts';

/** Findings of all rules on one entry, in the order of the registry. */
export function runChecks(input: CheckInput): Finding[] {
  return CHECKS.flatMap((rule) => rule.check(input));
}
