import { DERATING_POLICIES } from '../standards/derating/index.ts';
import type { Check, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'derating-policy-unknown',
  title: 'The derating policy is not known',
  severity: 'warning',
  why: 'The parts are judged by another policy than the one that the entry names.',
  advice: `Name one of: ${DERATING_POLICIES.map(({ id }) => id).join(', ')}; or write your own in policies/ beside site.yaml.`,
  source: commonPractice('every limit names the policy that it comes from'),
};

export const deratingPolicyUnknown: Check = {
  ...RULE,
  check: ({ entry, derived }) => {
    const { derating } = entry;
    if (derating === null || derating === derived.derating.id) return [];
    const message = `There is no derating policy "${derating}"; the parts are judged by ${derived.derating.id}.`;
    return [findingOf(RULE, atValue('derating'), { message, subject: derating })];
  },
};
