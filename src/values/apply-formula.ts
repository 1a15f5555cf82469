import type { Dimension } from '../units/dimension.ts';
import type { Formula } from './formula.ts';
import { joinMissing, missing } from './missing.ts';
import { EXACT_DIGITS, supportedDigits } from './supported-digits.ts';
import { isMissing, type Known, type Missing, type Value } from './value.ts';

const NOMINAL_DIGITS = 3;

type Dimensions = Readonly<Record<string, Dimension>>;
type Numbers<I> = { readonly [K in keyof I]: number };

/**
 * Applies a formula to values. The result's interval runs over all corners of the inputs' intervals and the nominal
 * point; its origin holds the inputs, so that the whole tree can be shown.
 *
 * @returns a missing value with all reasons and needs joined where an input is missing, and one that names the formula
 * where the inputs lie outside its validity or the result is not finite; never NaN
 */
export function applyFormula<I extends Dimensions, D extends Dimension>(
  formula: Formula<I, D>,
  inputs: { readonly [K in keyof I]: Known<I[K]> },
): Known<D> {
  const entries: readonly (readonly [string, Known])[] = Object.entries(inputs);
  const absent = entries.map(([, known]) => known).filter(isMissing);
  if (absent.length > 0) return joinMissing(absent);
  const values = entries.filter((entry): entry is readonly [string, Value] => !isMissing(entry[1]));

  // The keys are those of `inputs`, whose type has every key of `I`.
  const nominal = Object.fromEntries(values.map(([key, value]) => [key, value.nominal])) as Numbers<I>;
  const corners = cornersOf(values, nominal);
  const points = formula.turningPoints === undefined ? corners : corners.flatMap((corner) => [corner, ...turns(formula, values, corner)]);
  const middle = formula.compute(nominal);
  // Where every input is a point, the only corner is the nominal point itself.
  const results = [middle, ...points.filter((point) => point !== nominal).map((point) => formula.compute(point))];
  if (!results.every(Number.isFinite)) return outside(formula);
  const low = Math.min(...results);
  const high = Math.max(...results);
  const significant = Math.min(digitsOf(values), supportedDigits(low, middle, high));
  const origin = { evidence: 'computed', formula: formula.id, inputs: Object.fromEntries(values) } as const;
  return { dimension: formula.output.dimension, low, nominal: middle, high, significant, origin };
}

/** Every choice of low and high; an input known as a point has one, so that the corners stay few. */
function cornersOf<N extends Readonly<Record<string, number>>>(values: readonly (readonly [string, Value])[], nominal: N): readonly N[] {
  return values.reduce<readonly N[]>(
    (corners, [key, { low, high }]) =>
      low === high
        ? corners
        : corners.flatMap((corner) => [
            { ...corner, [key]: low },
            { ...corner, [key]: high },
          ]),
    [nominal],
  );
}

/** The corner with one input moved to where the result turns, for each input whose interval holds such a point. */
function turns<I extends Dimensions, D extends Dimension>(
  formula: Formula<I, D>,
  values: readonly (readonly [string, Value])[],
  corner: Numbers<I>,
): readonly Numbers<I>[] {
  const found: readonly (readonly [string, unknown])[] = Object.entries(formula.turningPoints?.(corner) ?? {});
  return found.flatMap(([key, at]) => {
    const value = values.find(([name]) => name === key)?.[1];
    const isInside = value !== undefined && typeof at === 'number' && at > value.low && at < value.high;
    return isInside ? [{ ...corner, [key]: at }] : [];
  });
}

function outside(formula: Pick<Formula, 'title' | 'validity'>): Missing {
  const limits = formula.validity.length > 0 ? ` (${formula.validity.join(' ')})` : '';
  return missing(`${formula.title} has no finite result for these inputs${limits}`);
}

/**
 * Digits of the least certain input. Not counted: constants that are exact by convention, and inputs that were read with an
 * interval or assumed as one, since the interval of the result speaks for them (0.05 V ± 0.05 V added to 44.8 V must not cost
 * it its digits).
 */
function digitsOf(values: readonly (readonly [string, Value])[]): number {
  const counted = values.map(([, value]) => value).filter((value) => value.origin.evidence === 'computed' || isReadPoint(value));
  return counted.length > 0 ? Math.min(...counted.map(digitsOfInput)) : EXACT_DIGITS;
}

function isReadPoint(value: Value): boolean {
  return value.origin.evidence !== 'assumed' && value.low === value.high;
}

/** What is printed, marked or in a datasheet is a nominal value ("65 W", "4 A") and good to three digits; a measurement is not. */
function digitsOfInput(value: Value): number {
  const { evidence } = value.origin;
  const isNominal = evidence === 'printed' || evidence === 'marked' || evidence === 'datasheet';
  return isNominal ? Math.max(NOMINAL_DIGITS, value.significant) : value.significant;
}
