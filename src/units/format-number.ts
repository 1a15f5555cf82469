/** Space that does not break and is narrow: between number and unit, and between groups of three digits. */
export const NARROW_SPACE = '\u202F';
export const MINUS = '\u2212';

/** Digits in groups of three from ten thousand on: "20 100", but "4700". */
function grouped(digits: string): string {
  if (digits.length < 5) return digits;
  let text = '';
  for (let end = digits.length; end > 0; end -= 3)
    text = digits.slice(Math.max(0, end - 3), end) + (text === '' ? '' : NARROW_SPACE + text);
  return text;
}

/**
 * A number with this many decimal places (negative ones round to tens, hundreds …), a true minus sign and grouped thousands.
 * Halves are rounded away from zero on the decimal digits, as a reader of the printed value would.
 */
export function formatNumber(value: number, places: number): string {
  const kept = Math.min(20, Math.max(0, places));
  const rounded = places < 0 ? Number(`${Math.round(Number(`${Math.abs(value)}e${places}`) || 0)}e${-places}`) : Math.abs(value);
  const fixed = roundedDecimal(rounded, kept);
  const [whole = '0', fraction] = fixed.split('.');
  const text = fraction === undefined ? grouped(whole) : `${grouped(whole)}.${fraction}`;
  return value < 0 && /[1-9]/.test(fixed) ? MINUS + text : text;
}

/** toFixed on the shortest decimal of the number, so that 1.005 with two places is 1.01 as printed digits say. */
function roundedDecimal(value: number, places: number): string {
  const shifted = Number(`${value}e${places}`);
  const isSafe = Number.isFinite(shifted) && shifted < 1e15;
  return isSafe ? Number(`${Math.round(shifted)}e${-places}`).toFixed(places) : value.toFixed(places);
}

/** Decimal places at which this many significant digits of the value end. */
export function placesFor(value: number, significant: number): number {
  if (value === 0 || !Number.isFinite(value)) return Math.max(0, significant - 1);
  const exponent = Number(value.toExponential(Math.max(0, Math.min(20, significant - 1))).split('e')[1]);
  return significant - 1 - exponent;
}
