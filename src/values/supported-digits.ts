/** More digits than any measurement has: the count for numbers that are exact by convention. */
export const EXACT_DIGITS = 15;

/**
 * Significant digits of `nominal` that the interval from `low` to `high` supports. Half of the interval is taken as the
 * uncertainty and kept to two digits where it begins with 10 to 35, else to one (common practice, the particle-data
 * rounding rule, from memory); the nominal value is given to the same decimal place. At least 1, at most `EXACT_DIGITS`.
 */
export function supportedDigits(low: number, nominal: number, high: number): number {
  const half = (high - low) / 2;
  if (!(half > 0) || nominal === 0 || half < Math.abs(nominal) * 10 ** -EXACT_DIGITS) return EXACT_DIGITS;
  const order = Math.floor(Math.log10(half));
  const leadingTwo = half / 10 ** (order - 1);
  const lastPlace = leadingTwo < 35.5 ? order - 1 : order;
  const digits = Math.floor(Math.log10(Math.abs(nominal))) - lastPlace + 1;
  return Math.min(EXACT_DIGITS, Math.max(1, digits));
}

/** Significant digits of the shortest decimal writing of a number: 2 for 1.1, 1 for 400. */
export function writtenDigits(number: number): number {
  const mantissa = Math.abs(number).toExponential().split('e')[0] ?? '1';
  return mantissa.replace('.', '').length;
}
