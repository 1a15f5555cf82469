import type { Finding } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { commonPractice } from './finding-of.ts';
import { proseFindings } from './prose-findings.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'prose-against-data',
  title: 'The text and the data disagree',
  severity: 'warning',
  why: 'Readers see both; two swapped digits in one of them cost the trust in all others.',
  advice: 'Correct one of the two, or quote the value by name: :value[mass].',
  source: commonPractice('one fact, one number'),
};

export const proseAgainstData: Check = { ...RULE, check };

interface Contradiction {
  readonly start: number;
  readonly end: number;
  readonly message: string;
}

function check(input: CheckInput): Finding[] {
  const rated = isMissing(input.derived.ratedPower) ? null : input.derived.ratedPower.nominal;
  return proseFindings(RULE, input, ({ text }) => [
    ...massesIn(text, input.entry),
    ...sizesIn(text, input.entry),
    ...ratedPowersIn(text, rated),
  ]);
}

const MASS = /(?<![\d.,])(\d+(?:[.,]\d+)?)\s?(kg|g)\b(?!\/)/g;

/** A mass near the device's own but not it; other masses in the text are of parts. */
function massesIn(sentence: string, entry: Entry): Contradiction[] {
  const own = entry.body.mass?.quantity;
  if (own === undefined) return [];
  return [...sentence.matchAll(MASS)].flatMap((match) => {
    const kilograms = numberOf(match[1]) * (match[2] === 'kg' ? 1 : 1e-3);
    const slack = Math.max(
      (own.high ?? own.nominal) - own.nominal,
      own.nominal * PRINTED_SLACK,
      halfLastDigit(match[1]) * (match[2] === 'kg' ? 1 : 1e-3),
    );
    const ratio = kilograms / own.nominal;
    if (Math.abs(kilograms - own.nominal) <= slack || ratio < 0.7 || ratio > 1.4) return [];
    return [contradiction(match, `${match[0]} in the text, ${own.written} in the data.`)];
  });
}

const SIZE = /(\d+(?:[.,]\d+)?)\s?(?:mm|cm|in)?\s?[x×*]\s?(\d+(?:[.,]\d+)?)\s?(?:mm|cm|in)?\s?[x×*]\s?(\d+(?:[.,]\d+)?)\s?(mm|cm|in)\b/g;
const METRES: Readonly<Record<string, number>> = { mm: 1e-3, cm: 1e-2, in: 25.4e-3 };

/** Three edges of which at least one is the device's and at least one is not: a box of another size altogether is another thing. */
function sizesIn(sentence: string, entry: Entry): Contradiction[] {
  const size = entry.body.size?.size;
  if (size?.shape !== 'box' || !/[x×*]/.test(sentence)) return [];
  const own = size.edges.map((edge) => edge.nominal);
  return [...sentence.matchAll(SIZE)].flatMap((match) => {
    const unit = METRES[match[4] ?? 'mm'] ?? 1e-3;
    const same = sharedEdges(
      [match[1], match[2], match[3]].map((edge) => numberOf(edge) * unit),
      own,
    );
    return same === 0 || same === 3 ? [] : [contradiction(match, `${match[0]} in the text, ${size.written} in the data.`)];
  });
}

/** How many edges of a box are edges of another, each used once, within 2 % as millimetres and inches of one object differ. */
function sharedEdges(edges: readonly number[], own: readonly number[]): number {
  let left = [...own];
  for (const edge of edges) {
    const match = left.find((other) => Math.abs(edge - other) <= other * 0.02);
    if (match !== undefined) left = left.filter((_, place) => place !== left.indexOf(match));
  }
  return own.length - left.length;
}

const RATED =
  /\b(?:rated (?:output |power )?(?:at|of|for|power of|output of)|this|nameplate (?:says|promises|gives)) (\d+(?:[.,]\d+)?)\s?W\b/gi;

function ratedPowersIn(sentence: string, rated: number | null): Contradiction[] {
  if (rated === null) return [];
  return [...sentence.matchAll(RATED)].flatMap((match) => {
    const watts = numberOf(match[1]);
    if (Math.abs(watts - rated) <= rated * PRINTED_SLACK) return [];
    return [contradiction(match, `${match[1] ?? ''} W in the text, ${rounded(rated)} W in the data.`)];
  });
}

function contradiction(match: RegExpExecArray, message: string): Contradiction {
  return { start: match.index, end: match.index + match[0].length, message };
}

function numberOf(written: string | undefined): number {
  return Number((written ?? '').replace(',', '.'));
}

/** "190 g" of a device of 187 g is rounded; a final nought may be. */
function halfLastDigit(written: string | undefined): number {
  const [whole = '', decimals = ''] = (written ?? '').split(/[.,]/);
  if (decimals !== '') return 0.5 * 10 ** -decimals.length;
  const noughts = whole.length - whole.replace(/0+$/, '').length;
  return 0.5 * 10 ** noughts;
}
