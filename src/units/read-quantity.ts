import { disagreement } from './agreement.ts';
import { endOfLetters, isLetterAt } from './characters.ts';
import {
  cursorOn,
  hasErrors,
  isAtEnd,
  refusalOf,
  refuseRest,
  remark,
  skipSpaces,
  takeSign,
  takeWaveformPrefix,
  takeWord,
} from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { readCapacitorCode } from './digit-code.ts';
import { dimensionSlip } from './dimension-slip.ts';
import { DIMENSION_NAMES } from './dimension-names.ts';
import type { Dimension } from './dimension.ts';
import { readLabel } from './label.ts';
import type { Quantity, Reading } from './quantity.ts';
import { quantityOfCapacitorCode } from './quantity-of-code.ts';
import { matchUnit } from './match-unit.ts';
import { readMeasure } from './read-measure.ts';
import { scanNumeral } from './numeral.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';

/** What the field wants to be called in messages, and whether it takes a number without a unit. */
export interface QuantityOptions {
  /** Name with its article, such as "an on-resistance". */
  readonly subject?: string;
  /** Units in which it is usually written, such as "mΩ". */
  readonly units?: string;
  /** A number alone is taken in the SI unit, with a note; without this it is refused. A ratio may always be a number alone. */
  readonly bareNumber?: boolean;
}

/**
 * Reads one quantity of the given dimension, the whole text of it. A text that says it twice in different units ("9.1 oz / 258 g")
 * must agree with itself; the metric writing is kept. Never throws.
 */
export function readQuantity<D extends Dimension>(text: string, dimension: D, options: QuantityOptions = {}): Reading<Quantity<D>> {
  const subject = options.subject ?? DIMENSION_NAMES[dimension].phrase;
  const refusal = refusalOf(text, subject);
  if (refusal !== null) return { ok: false, remarks: [refusal] };
  const cursor = cursorOn(text);
  const quantity = readWhole(cursor, dimension, options);
  if (quantity === null || hasErrors(cursor.remarks)) return { ok: false, remarks: cursor.remarks };
  if (!isOf(quantity, dimension)) {
    const slip = dimensionSlip(quantity, dimension, subject, options.units);
    return { ok: false, remarks: [...cursor.remarks, { severity: 'error', ...slip, span: quantity.span }] };
  }
  return { ok: true, value: quantity, remarks: cursor.remarks };
}

function isOf<D extends Dimension>(quantity: Quantity, dimension: D): quantity is Quantity<D> {
  return quantity.dimension === dimension;
}

function readWhole(cursor: Cursor, dimension: Dimension, options: QuantityOptions): Quantity | null {
  const coded = dimension === 'capacitance' ? codedCapacitance(cursor) : null;
  if (coded !== null) return coded;
  skipSpaces(cursor);
  const takesWaveform = dimension === 'voltage' || dimension === 'current';
  const waveform = takesWaveform ? takeWaveformPrefix(cursor) : null;
  skipSpaces(cursor);
  const label = readLabel(cursor);
  const found = readOne(cursor, dimension, options);
  if (found === null) return null;
  const agreed = readSecondWriting(cursor, found, dimension);
  skipSpaces(cursor);
  if (!isAtEnd(cursor) && !hasErrors(cursor.remarks)) refuseRest(cursor, `one quantity was expected after “${agreed.written}”`);
  const said = waveform === null || agreed.waveform !== null ? {} : { waveform };
  return { ...agreed, ...said, ...(label === null ? {} : { label }) };
}

function codedCapacitance(cursor: Cursor): Quantity<'capacitance'> | null {
  const word = cursor.text.trim();
  const code = /^\d{3}[A-Z]$/.test(word) ? readCapacitorCode(word) : null;
  return code === null ? null : quantityOfCapacitorCode(cursor, code, cursor.text.indexOf(word), word.length);
}

function readOne(cursor: Cursor, dimension: Dimension, options: QuantityOptions): Quantity | null {
  const bareNumber = dimension === 'ratio' || options.bareNumber === true ? dimension : null;
  const start = cursor.at;
  const found = readMeasure(cursor, { dimension, bareNumber, isFuse: false });
  if (found === null) {
    refuseStart(cursor, dimension);
    return null;
  }
  const [first, ...rest] = found;
  const last = rest.at(-1);
  if (first === undefined || last === undefined) return first ?? null;
  return spanning(cursor, first, last, start);
}

/** "115 / 230 V" in one field: both ends are kept as a range, and it is said. */
function spanning(cursor: Cursor, first: Quantity, last: Quantity, start: number): Quantity {
  remark(cursor, 'note', `${first.written} and ${last.written} are two values; read as the range between them`, start, cursor.at);
  const [low, high] = first.nominal <= last.nominal ? [first.nominal, last.nominal] : [last.nominal, first.nominal];
  const written = cursor.written.slice(first.span.start, last.span.end);
  return {
    ...last,
    low,
    high,
    nominal: Number(((low + high) / 2).toPrecision(15)),
    bound: 'range',
    written,
    span: { start: first.span.start, end: last.span.end },
  };
}

function refuseStart(cursor: Cursor, dimension: Dimension): void {
  skipSpaces(cursor);
  const start = cursor.at;
  const end = endOfLetters(cursor.text, start);
  if (opensWithUnit(cursor.text, start)) {
    remark(cursor, 'error', 'the number must come first, then its unit', start, cursor.text.length);
    return;
  }
  const { phrase, units } = DIMENSION_NAMES[dimension];
  const what = isLetterAt(cursor.text, start) ? cursor.text.slice(start, end) : cursor.text.slice(start);
  remark(cursor, 'error', `number missing before “${what.trim()}”: ${phrase} is a number in ${units}`, start, cursor.text.length);
}

/** A unit with its number behind it, as in "kΩ 4.7". */
export function opensWithUnit(text: string, start: number): boolean {
  const end = endOfLetters(text, start);
  let next = end;
  while (text.charAt(next) === ' ' || text.charAt(next) === '\u00A0') next += 1;
  // "F1" is a part's name; a unit in front stands apart or is no single letter.
  if (next === end && end - start === 1 && text.charCodeAt(start) < 128) return false;
  const numeral = UNIT_SPELLINGS.has(text.slice(start, end)) ? scanNumeral(text, next) : null;
  if (numeral === null) return false;
  let behind = numeral.end;
  while (text.charAt(behind) === ' ' || text.charAt(behind) === '\u00A0') behind += 1;
  return matchUnit(text, behind, null, false) === null;
}

/** The same quantity in another unit, behind "/", "=", "or" or in brackets. */
function readSecondWriting(cursor: Cursor, first: Quantity, dimension: Dimension): Quantity {
  const before = cursor.at;
  const isBracketed = takeSign(cursor, '(');
  const isJoined =
    isBracketed ||
    takeSign(cursor, '/') ||
    takeSign(cursor, '=') ||
    takeSign(cursor, ',') ||
    takeSign(cursor, '≈') ||
    takeWord(cursor, ['or']) !== null;
  const found = isJoined ? readMeasure(cursor, { dimension, bareNumber: null, isFuse: false }) : null;
  const second = found?.[0];
  if (second === undefined || second.dimension !== first.dimension) {
    if (found === null || second !== undefined) cursor.at = before;
    return first;
  }
  if (isBracketed) takeSign(cursor, ')');
  return agreeing(cursor, first, second);
}

const IMPERIAL: ReadonlySet<string> = new Set(['in', 'mil', 'ft', 'in²', 'in³', 'oz', 'lb', '°F', 'W/in³', 'W/oz', 'W/lb', 'W/in²']);

/** Keeps the metric one of two writings, or says that they contradict each other. */
export function agreeing(cursor: Cursor, first: Quantity, second: Quantity): Quantity {
  const contradiction = disagreement(first, second);
  const span = { start: first.span.start, end: second.span.end };
  if (contradiction !== null) {
    cursor.remarks.push({ severity: 'error', message: contradiction, suggestion: null, span });
    return first;
  }
  cursor.remarks.push({ severity: 'note', message: `both units agree: ${first.written} and ${second.written}`, suggestion: null, span });
  return IMPERIAL.has(first.unit) && !IMPERIAL.has(second.unit) ? second : first;
}

/** Whether a unit is one of the inch, pound and Fahrenheit world. */
export function isImperial(symbol: string): boolean {
  return IMPERIAL.has(symbol);
}
