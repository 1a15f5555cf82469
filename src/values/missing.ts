import type { Missing } from './value.ts';

/** A value that is not there: why, and what would have to be known for it to be there. */
export function missing(reason: string, needs: readonly string[] = []): Missing {
  return { missing: true, reason, needs };
}

/** One missing value that says everything several say, each reason and need once, in the order given. */
export function joinMissing(several: readonly Missing[]): Missing {
  const reasons = [...new Set(several.map((one) => one.reason))];
  const needs = [...new Set(several.flatMap((one) => one.needs))];
  return missing(reasons.join('; '), needs);
}
