import type { Finding } from '../diagnostics/finding.ts';
import type { Claim, Entry } from '../entry/entry.ts';
import { formatInterval } from '../units/format.ts';
import type { Quantity } from '../units/quantity.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { claimedStresses, type ClaimedStress } from './claimed-stress.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'claim-against-computed',
  title: 'A stated result is not what its own numbers give',
  severity: 'warning',
  why: 'A reader who computes it from the size, the power or the ratings beside it gets another number.',
  advice: 'Compare both with the document; where it contradicts itself, answer the finding and say so in the text.',
  source: commonPractice('2 % or half of the last printed digit: sizes in mm and inches of one object differ so'),
};

export const claimAgainstComputed: Check = { ...RULE, check };

const SLACK = 0.02;
/** Words of claims for values that are computed under another name. */
const NAMED_AS: Readonly<Record<string, string>> = {
  'power density': 'density',
  'rated power': 'rated-power',
  'output power': 'rated-power',
};

function check({ entry, derived }: CheckInput): Finding[] {
  const named = entry.claims.flatMap((claim) => {
    const words = claim.of.toLowerCase();
    const computed = derived.named[NAMED_AS[words] ?? words.replaceAll(' ', '-')] ?? operatingFigure(derived, words);
    return computed === undefined ? [] : judged(claim, computed, entry);
  });
  return [...named, ...claimedStresses(entry, derived.stress).flatMap(ofStress)];
}

/** What a stage works at, by its name: "resonant frequency"; of several stages with such a figure nobody knows which is meant. */
function operatingFigure({ operating }: CheckInput['derived'], words: string): Known | undefined {
  const [only, ...others] = operating.filter(({ name }) => name.toLowerCase() === words);
  return others.length === 0 ? only?.value : undefined;
}

/** A stress is stated with an allowance or without, so that one of those worked out should be it. */
function ofStress({ claim, references, computed }: ClaimedStress): Finding[] {
  const { quantity } = claim;
  if (quantity === null || computed.some((one) => agrees(quantity, one))) return [];
  const distance = (one: Value): number => Math.abs(one.nominal - quantity.nominal);
  const [nearest] = computed.toSorted((one, other) => distance(one) - distance(other));
  return nearest === undefined ? [] : [differing(claim, nearest, ` for ${references.join(', ')} from the ratings beside it`)];
}

/** Size and density are compared on one basis only. */
function judged(claim: Claim, computed: Known, entry: Entry): Finding[] {
  const { quantity } = claim;
  if (quantity === null || isMissing(computed) || computed.dimension !== quantity.dimension) return [];
  if (claim.basis !== null && claim.basis !== entry.body.basis) return [];
  if (computed.origin.evidence !== 'computed' || agrees(quantity, computed)) return [];
  return [differing(claim, computed)];
}

function differing(claim: Claim, computed: Value, about = ''): Finding {
  const shown = formatInterval(computed, computed.dimension, claim.quantity?.unit);
  const where = claim.where === null ? '' : ` (${claim.where})`;
  const message = `${claim.of}: ${claim.written} stated${where}, ${shown.text} computed${about}.`;
  return findingOf(RULE, atValue(...claim.path, 'value'), { message, subject: claim.of });
}

function agrees(stated: Quantity, computed: Value): boolean {
  const slack = Math.max(Math.abs(stated.nominal) * SLACK, stated.resolution / 2);
  const belowCeiling = computed.low <= (stated.high ?? stated.nominal) + slack;
  const aboveFloor = computed.high >= (stated.low ?? stated.nominal) - slack;
  if (stated.bound === 'at most' || stated.bound === 'below') return belowCeiling;
  if (stated.bound === 'at least' || stated.bound === 'above') return aboveFloor;
  return belowCeiling && aboveFloor;
}
