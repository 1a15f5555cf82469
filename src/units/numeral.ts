import { endOfDigits, isDigitAt, isSpaceAt } from './characters.ts';

/** How a comma with exactly three digits after it is to be taken: the unit decides. */
type CommaDoubt = 'thousands or decimal' | null;

/** A number as written, its digits kept so that it meets its prefix in decimal and is rounded once. */
export interface Numeral {
  readonly sign: '' | '-';
  /** Digits with a point, such as "4.70"; commas and group separators are resolved. */
  readonly digits: string;
  readonly exponent: number;
  readonly start: number;
  readonly end: number;
  readonly isDecimalComma: boolean;
  readonly hasExponent: boolean;
  /** The writing "2,250": one comma, three digits. `digits` then holds the thousands reading. */
  readonly doubt: CommaDoubt;
  /** Digits grouped by ordinary spaces, as in "10 000". */
  readonly isSpaceGrouped: boolean;
}

interface Mantissa {
  readonly digits: string;
  readonly end: number;
  readonly isDecimalComma: boolean;
  readonly doubt: CommaDoubt;
  readonly isSpaceGrouped: boolean;
}

const PLAIN = { isDecimalComma: false, doubt: null, isSpaceGrouped: false } as const;

/** Reads the number that starts at this index, or tells that none does. Never looks at the unit. */
export function scanNumeral(text: string, index: number): Numeral | null {
  const signed = text.charAt(index) === '-' || text.charAt(index) === '+';
  const start = signed ? index + 1 : index;
  const mantissa = isDigitAt(text, start) ? scanMantissa(text, start) : scanBareFraction(text, start);
  if (mantissa === null) return null;
  const power = scanPower(text, mantissa.end);
  return {
    sign: text.charAt(index) === '-' ? '-' : '',
    digits: mantissa.digits,
    exponent: power?.exponent ?? 0,
    start: index,
    end: power?.end ?? mantissa.end,
    isDecimalComma: mantissa.isDecimalComma,
    hasExponent: power !== null,
    doubt: mantissa.doubt,
    isSpaceGrouped: mantissa.isSpaceGrouped,
  };
}

function scanBareFraction(text: string, start: number): Mantissa | null {
  if (text.charAt(start) !== '.' || !isDigitAt(text, start + 1)) return null;
  const end = endOfDigits(text, start + 1);
  return { ...PLAIN, digits: `0.${text.slice(start + 1, end)}`, end };
}

/** True where exactly three digits follow this index. */
function isGroupAt(text: string, index: number): boolean {
  return endOfDigits(text, index) === index + 3;
}

function scanMantissa(text: string, start: number): Mantissa {
  const end = endOfDigits(text, start);
  const whole = text.slice(start, end);
  const next = text.charAt(end);
  const canGroup = whole.length <= 3;
  if (next === ',' && isDigitAt(text, end + 1)) return scanComma(text, end, whole);
  if (canGroup && (next === "'" || isSpaceAt(text, end)) && isGroupAt(text, end + 1)) return scanGroups(text, end, whole, next);
  if (next === '.' && isDigitAt(text, end + 1)) return scanPoint(text, end, whole);
  return { ...PLAIN, digits: whole, end };
}

function scanPoint(text: string, point: number, whole: string): Mantissa {
  const end = endOfDigits(text, point + 1);
  const fraction = text.slice(point + 1, end);
  // "1.234,5": points group and the comma is the decimal sign.
  if (fraction.length === 3 && whole.length <= 3 && text.charAt(end) === ',' && isDigitAt(text, end + 1)) {
    const last = endOfDigits(text, end + 1);
    return { ...PLAIN, digits: `${whole}${fraction}.${text.slice(end + 1, last)}`, end: last, isDecimalComma: true };
  }
  return { ...PLAIN, digits: `${whole}.${fraction}`, end };
}

function scanGroups(text: string, from: number, whole: string, separator: string): Mantissa {
  let end = from;
  let digits = whole;
  let groups = 0;
  while (text.charAt(end) === separator && isGroupAt(text, end + 1)) {
    digits += text.slice(end + 1, end + 4);
    end += 4;
    groups += 1;
  }
  const isSpaceGrouped = separator === ' ' && groups === 1;
  const isFractional = (text.charAt(end) === '.' || (text.charAt(end) === ',' && separator !== ',')) && isDigitAt(text, end + 1);
  if (!isFractional) return { ...PLAIN, digits, end, isSpaceGrouped };
  const last = endOfDigits(text, end + 1);
  return {
    digits: `${digits}.${text.slice(end + 1, last)}`,
    end: last,
    isSpaceGrouped,
    isDecimalComma: text.charAt(end) === ',',
    doubt: null,
  };
}

function scanComma(text: string, comma: number, whole: string): Mantissa {
  const end = endOfDigits(text, comma + 1);
  const fraction = text.slice(comma + 1, end);
  const isGroup = fraction.length === 3 && whole.length <= 3 && !whole.startsWith('0');
  if (isGroup) {
    const grouped = scanGroups(text, comma, whole, ',');
    const isSure = grouped.digits.length > whole.length + 3 || grouped.digits.includes('.');
    return isSure ? grouped : { ...grouped, doubt: 'thousands or decimal' };
  }
  // "5,9,15": a list, not a decimal comma.
  if (text.charAt(end) === ',' && isDigitAt(text, end + 1)) return { ...PLAIN, digits: whole, end: comma };
  return { ...PLAIN, digits: `${whole}.${fraction}`, end, isDecimalComma: true };
}

/** "e3", "E-6", or "× 10^-6" after the digits. */
function scanPower(text: string, index: number): { exponent: number; end: number } | null {
  const letter = text.charAt(index);
  if (letter === 'e' || letter === 'E') return scanExponent(text, index + 1);
  let at = index;
  while (isSpaceAt(text, at)) at += 1;
  if (!'×x*·'.includes(text.charAt(at)) || text.charAt(at) === '') return null;
  at += 1;
  while (isSpaceAt(text, at)) at += 1;
  return text.startsWith('10^', at) ? scanExponent(text, at + 3) : null;
}

function scanExponent(text: string, index: number): { exponent: number; end: number } | null {
  const signed = text.charAt(index) === '-' || text.charAt(index) === '+';
  const start = signed ? index + 1 : index;
  const end = endOfDigits(text, start);
  if (end === start || end - start > 3) return null;
  return { exponent: Number(text.slice(index, end)), end };
}

/** The same number with its one comma taken as decimal sign. */
export function asDecimalComma(numeral: Numeral): Numeral {
  const digits = `${numeral.digits.slice(0, -3)}.${numeral.digits.slice(-3)}`;
  return { ...numeral, digits, doubt: null, isDecimalComma: true };
}

/** Digits that count: leading zeros do not, trailing ones do; a lone zero is one digit. */
export function significantDigits(digits: string): number {
  const bare = digits.replace('.', '').replace(/^0+/, '');
  return Math.max(1, bare.length);
}

/** Decimal places written after the point. */
export function decimalPlaces(digits: string): number {
  const point = digits.indexOf('.');
  return point < 0 ? 0 : digits.length - point - 1;
}
