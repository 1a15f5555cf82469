import type { Quantity } from '../units/quantity.ts';
import type { MadeBy } from '../entry/entry.ts';
import type { Evidence, Origin, Value } from '../values/value.ts';

type Given = Exclude<Evidence, 'computed'>;

/**
 * A share, limit or total as a value. A printed "15 W max" is what the port gets, so a side that the writing leaves open
 * is closed at the number itself.
 */
export function powerValue(quantity: Quantity<'power'>, evidence: Given, at: string, { readOn, method }: MadeBy = {}): Value<'power'> {
  return {
    dimension: 'power',
    low: quantity.low ?? quantity.nominal,
    nominal: quantity.nominal,
    high: quantity.high ?? quantity.nominal,
    significant: quantity.significant,
    origin: {
      ...originOf(quantity.written, evidence, at),
      ...(evidence === 'measured' && readOn !== undefined ? { instrument: readOn.instrument } : {}),
      ...(evidence === 'measured' && method !== undefined ? { method } : {}),
    },
  };
}

function originOf(written: string, evidence: Given, at: string): Origin {
  if (evidence !== 'assumed') return { evidence, written, at };
  return {
    evidence,
    reason: `${written} is the author's assumption at ${at}`,
    source: { title: 'The entry itself', section: at, standing: 'common practice' },
  };
}

/** Sum of one or more powers, two by two as the formula has it; a single one is its own sum. */
export function sumOfPowers(parts: readonly [Value<'power'>, ...Value<'power'>[]]): Value<'power'> {
  const [first, ...rest] = parts;
  return rest.reduce(sumOfTwo, first);
}

/** Digits go by decimal place, not by count: 100 W + 18 W is 118 W. */
function sumOfTwo(first: Value<'power'>, second: Value<'power'>): Value<'power'> {
  const nominal = rounded(first.nominal + second.nominal);
  return {
    dimension: 'power',
    low: rounded(first.low + second.low),
    nominal,
    high: rounded(first.high + second.high),
    significant: digitsDownTo(nominal, coarsestPlace([first, second])),
    origin: { evidence: 'computed', formula: 'sum-of-shares', inputs: { first, second } },
  };
}

/** What the total leaves over; negative where the shares promise more than the total. */
export function unusedPower(whole: Value<'power'>, sum: Value<'power'>): Value<'power'> {
  const nominal = rounded(whole.nominal - sum.nominal);
  return {
    dimension: 'power',
    low: rounded(whole.low - sum.high),
    nominal,
    high: rounded(whole.high - sum.low),
    significant: digitsDownTo(nominal, coarsestPlace([whole, sum])),
    origin: { evidence: 'computed', formula: 'unused-power', inputs: { total: whole, sum } },
  };
}

/** Powers are written to a milliwatt at the finest; adding binary fractions must not show as 37.800000000000004 W. */
function rounded(watts: number): number {
  return Math.round(watts * 1e6) / 1e6;
}

/** Power of ten of the last digit that all values carry. */
function coarsestPlace(values: readonly Value<'power'>[]): number {
  return Math.max(...values.map((value) => leadingPlace(value.nominal) + 1 - value.significant));
}

function digitsDownTo(watts: number, place: number): number {
  return Math.max(1, leadingPlace(watts) + 1 - place);
}

function leadingPlace(watts: number): number {
  return watts === 0 ? 0 : Math.floor(Math.log10(Math.abs(watts)));
}
