import type { CheckInput } from '../../src/checks/check.ts';
import { CHECKS } from '../../src/checks/index.ts';
import type { Finding } from '../../src/diagnostics/finding.ts';

/** Findings of all rules on one entry, in the order of the registry. */
export function runChecks(input: CheckInput): Finding[] {
  return CHECKS.flatMap((rule) => rule.check(input));
}
