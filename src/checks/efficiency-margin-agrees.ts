import type { EfficiencyJudgement } from '../derived/efficiency/efficiency-figures.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Claim } from '../entry/entry.ts';
import { EFFICIENCY_RULES } from '../standards/efficiency/index.ts';
import type { Quantity } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'efficiency-margin-agrees',
  title: 'A stated margin over an efficiency limit does not follow from the efficiency beside it',
  severity: 'warning',
  why: 'Average less limit is the margin. Where no limit that is known gives the stated one, the average, the margin or its voltage is a slip.',
  advice: 'Compare both with the document; where it contradicts itself, answer the finding and say so in the text.',
  source: commonPractice('half of the last printed digit of average, margin and limit each'),
};

export const efficiencyMarginAgrees: Check = { ...RULE, check };

/** Limits are worked out here and may have been rounded to 0.01 points before a document took them off. */
const ROUNDED_LIMIT = 0.005;

function check({ entry, derived }: CheckInput): Finding[] {
  return entry.claims.flatMap((claim) => {
    const { quantity } = claim;
    if (!/^efficiency margin$/iu.test(claim.of) || quantity === null || quantity.dimension !== 'ratio') return [];
    const judgements = derived.efficiency.judgements.filter((judgement) => isMeant(judgement, claim));
    return judgements.length === 0 || judgements.some((one) => agrees(quantity, one)) ? [] : [findingAt(claim, quantity, judgements)];
  });
}

/** The average at the voltage, line and port of the claim; a claim that names no voltage speaks of all and is not compared. */
function isMeant({ of, port, setting, line, margin }: EfficiencyJudgement, claim: Claim): boolean {
  const isPort = claim.port === null || claim.port === port;
  return of === 'average' && margin !== null && isPort && isAt(claim.output, setting) && isAt(claim.line, line);
}

function isAt(written: string | null, volts: number | null): boolean {
  const reading = written === null ? null : readQuantity(written, 'voltage');
  return reading?.ok === true && volts !== null && Math.abs(reading.value.nominal - volts) <= 0.02 * volts;
}

/** Both margins in points of a per cent. */
function agrees(stated: Quantity, { margin, measured }: EfficiencyJudgement): boolean {
  if (margin === null) return true;
  const points = stated.nominal * 100;
  const printed = isMissing(measured) ? 0 : lastDigit(measured.nominal, measured.significant) * 100;
  const slack = (stated.resolution * 100 + printed) / 2 + ROUNDED_LIMIT + 1e-9;
  if (stated.bound === 'at least' || stated.bound === 'above') return margin.high >= points - slack;
  if (stated.bound === 'at most' || stated.bound === 'below') return margin.low <= points + slack;
  return margin.low - slack <= points && points <= margin.high + slack;
}

/** Weight of the last digit of a number that is printed with so many. */
function lastDigit(nominal: number, significant: number): number {
  return nominal === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(nominal))) + 1 - significant);
}

function findingAt(claim: Claim, stated: Quantity, judgements: readonly EfficiencyJudgement[]): Finding {
  const distance = ({ margin }: EfficiencyJudgement): number => Math.abs((margin?.low ?? Infinity) - stated.nominal * 100);
  const nearest = judgements.toSorted((one, other) => distance(one) - distance(other))[0];
  const rule = EFFICIENCY_RULES.find(({ id }) => id === nearest?.rule);
  const where = claim.where === null ? '' : ` (${claim.where})`;
  const at = [claim.output, claim.line].filter((part) => part !== null).join(' and ');
  const points = (nearest?.margin?.low ?? 0).toFixed(2);
  const limit = `${((nearest?.limit ?? 0) * 100).toFixed(2)} % of ${rule?.name ?? 'the limit'}`;
  const message = `${claim.of} at ${at}: ${claim.written} stated${where}, ${points} points over the ${limit} computed from the average beside it.`;
  return findingOf(RULE, atValue(...claim.path, 'value'), { message, subject: `${claim.of} at ${at}` });
}
