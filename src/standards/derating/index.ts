import { consumerPractice } from './consumer-practice.ts';
import { milDtl917 } from './mil-dtl-917.ts';
import { milStd975m } from './mil-std-975m.ts';
import { nasaEeeInst002 } from './nasa-eee-inst-002.ts';
import { racGuideline } from './rac-guideline.ts';
import type { DeratingPolicy, SiteDerating } from './policy.ts';

/** Every derating policy, the default first. A test compares this list with the folder. */
export const DERATING_POLICIES: readonly DeratingPolicy[] = [consumerPractice, racGuideline, milDtl917, milStd975m, nasaEeeInst002];

/** The policy that stresses are judged by where a site chooses none. */
export const DEFAULT_POLICY = consumerPractice;

const NOTHING_SAID: SiteDerating = { chosen: null, own: [] };

/** The policy with this id, else the one that the site chose, else the default; unknown names count as none. */
export function policyOf(id: string | null, site: SiteDerating = NOTHING_SAID): DeratingPolicy {
  const all = [...DERATING_POLICIES, ...site.own];
  return [id, site.chosen].flatMap((name) => all.find((policy) => policy.id === name) ?? []).at(0) ?? DEFAULT_POLICY;
}
