import { consumerPractice } from './consumer-practice.ts';
import { milDtl917 } from './mil-dtl-917.ts';
import { milStd975m } from './mil-std-975m.ts';
import { nasaEeeInst002 } from './nasa-eee-inst-002.ts';
import { racGuideline } from './rac-guideline.ts';
import type { DeratingPolicy } from './policy.ts';

/** Every derating policy, the default first. A test compares this list with the folder. */
export const DERATING_POLICIES: readonly DeratingPolicy[] = [consumerPractice, racGuideline, milDtl917, milStd975m, nasaEeeInst002];

/** The policy that stresses are judged by where a site chooses none. */
export const DEFAULT_POLICY = consumerPractice;

/** The policy with this id; the default where none is named or nobody ships one of that name. */
export function policyOf(id: string | null): DeratingPolicy {
  return DERATING_POLICIES.find((policy) => policy.id === id) ?? DEFAULT_POLICY;
}
