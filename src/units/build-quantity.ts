import { remark, spanBetween, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { DIMENSION_NAMES } from './dimension-names.ts';
import type { Limit } from './limit-words.ts';
import { decimalPlaces, significantDigits } from './numeral.ts';
import type { Bound, Quantity } from './quantity.ts';
import { settledNumeral } from './read-term.ts';
import type { Term } from './read-term.ts';
import type { WrittenTolerance } from './read-tolerance.ts';
import type { Tolerance } from './tolerance-letter.ts';
import { inSiUnit } from './unit.ts';
import type { Unit } from './unit.ts';

/** What surrounds the numbers of one quantity. */
export interface QuantityShape {
  readonly limit: Limit;
  readonly tolerance: WrittenTolerance | null;
  readonly from: number;
  readonly to: number;
}

interface Reach {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** A bare number of a list takes the unit and the waveform of the one that has them. */
export function withNumber(term: Term, owner: Term): Term {
  return { ...term, unit: owner.unit, waveform: owner.waveform };
}

/** Puts numbers, unit, tolerance and limits together; null after an error that says why not. */
export function buildQuantity(
  cursor: Cursor,
  joint: 'one' | 'range' | 'triple',
  terms: readonly Term[],
  unit: Unit,
  shape: QuantityShape,
): Quantity | null {
  const numbers = terms.map((term) => readNumber(cursor, term, term.unit ?? unit));
  if (!numbers.every((number) => Number.isFinite(number.value)))
    return refuseNumber(cursor, shape, 'this number is too large to be a quantity');
  const isNegative = numbers.some((number) => number.value < 0) && !DIMENSION_NAMES[unit.dimension].isSigned;
  if (isNegative) return refuseNumber(cursor, shape, `${DIMENSION_NAMES[unit.dimension].phrase} cannot be negative`);
  const reach = reachOf(
    cursor,
    joint,
    numbers.map((number) => number.value),
    unit,
    shape,
    terms[0]?.tolerance ?? null,
  );
  if (reach === null) return null;
  if (unit.remark !== null) remark(cursor, unit.remark.severity, unit.remark.message, shape.from, shape.to);
  if (shape.limit.isApproximate) remark(cursor, 'note', 'an approximate value: no bounds are known', shape.from, shape.to);
  return {
    dimension: unit.dimension,
    ...bounded(reach, joint, shape.limit),
    qualifier: shape.limit.qualifier,
    significant: Math.max(...numbers.map((number) => number.significant)),
    resolution: Math.min(...numbers.map((number) => number.resolution)),
    waveform: terms.map((term) => term.waveform).find((waveform) => waveform !== null) ?? null,
    ...(unit.isPeakToPeak ? { label: 'peak to peak' } : {}),
    written: writtenBetween(cursor, shape.from, shape.to).trim(),
    unit: unit.symbol,
    span: spanBetween(cursor, shape.from, shape.to),
  };
}

function refuseNumber(cursor: Cursor, shape: QuantityShape, why: string): null {
  remark(cursor, 'error', `“${writtenBetween(cursor, shape.from, shape.to).trim()}”: ${why}`, shape.from, shape.to);
  return null;
}

function readNumber(cursor: Cursor, term: Term, unit: Unit): { value: number; significant: number; resolution: number } {
  const numeral = settledNumeral(cursor, term.numeral, unit);
  const plain = { ...unit, offset: 0 };
  return {
    value: inSiUnit(numeral.sign + numeral.digits, numeral.exponent, unit),
    significant: significantDigits(numeral.digits),
    resolution: inSiUnit('1', numeral.exponent - decimalPlaces(numeral.digits), plain),
  };
}

function reachOf(
  cursor: Cursor,
  joint: 'one' | 'range' | 'triple',
  values: readonly number[],
  unit: Unit,
  shape: QuantityShape,
  coded: Tolerance | null,
): Reach | null {
  const first = values[0] ?? 0;
  const last = values.at(-1) ?? first;
  if (joint === 'triple') return { low: first, nominal: values[1] ?? first, high: last };
  if (joint === 'range') {
    if (first > last)
      remark(cursor, 'warning', 'this range runs downwards; it is read from the lower to the higher end', shape.from, shape.to);
    const [low, high] = first > last ? [last, first] : [first, last];
    return { low, nominal: midpoint(low, high), high };
  }
  const written = shape.tolerance;
  if (written !== null && written.unit !== null && !isSameScale(written.unit, unit)) {
    return refuseTolerance(cursor, shape, written.unit, unit);
  }
  const tolerance = written?.tolerance ?? coded;
  return tolerance === null ? { low: first, nominal: first, high: first } : spread(first, tolerance, unit, written?.unit ?? unit);
}

/** "25 °C ± 5 K" is as good as "25 °C ± 5 °C". */
function isSameScale(one: Unit, other: Unit): boolean {
  return one.dimension === other.dimension || (other.dimension === 'temperature' && one.dimension === 'temperature difference');
}

function refuseTolerance(cursor: Cursor, shape: QuantityShape, given: Unit, unit: Unit): null {
  const message = `the tolerance is ${DIMENSION_NAMES[given.dimension].phrase} and the value ${DIMENSION_NAMES[unit.dimension].phrase}`;
  remark(cursor, 'error', message, shape.from, shape.to);
  return null;
}

/** The middle, free of the last binary digit's noise: (3.3 + 21) / 2 prints as 12.15. */
function midpoint(low: number, high: number): number {
  return Number(((low + high) / 2).toPrecision(15));
}

/** Percent of a percentage are percentage points: "92 % ± 1 %" runs from 91 to 93 %. */
function spread(nominal: number, tolerance: Tolerance, unit: Unit, toleranceUnit: Unit): Reach {
  const share = unit.symbol === '%' ? 1 : Math.abs(nominal);
  const scale = tolerance.kind === 'fraction' ? share : inSiUnit('1', 0, { ...toleranceUnit, offset: 0 });
  const clean = (value: number): number => Number(value.toPrecision(15));
  return { low: clean(nominal - tolerance.below * scale), nominal, high: clean(nominal + tolerance.above * scale) };
}

/** A one-sided limit has no other side: "≤ 75 mW" says nothing of a lower bound. */
function bounded(reach: Reach, joint: 'one' | 'range' | 'triple', limit: Limit): Pick<Quantity, 'low' | 'nominal' | 'high' | 'bound'> {
  const bound: Bound = joint === 'one' ? (limit.bound ?? 'value') : 'range';
  if (bound === 'at most' || bound === 'below') return { low: null, nominal: reach.nominal, high: reach.high, bound };
  if (bound === 'at least' || bound === 'above') return { low: reach.low, nominal: reach.nominal, high: null, bound };
  return { ...reach, bound };
}
