/** A number with at most so many significant digits, without exponent and without trailing zeros: 1600, 24.6, 0.219. */
export function rounded(number: number, digits = 3): string {
  if (number === 0 || !Number.isFinite(number)) return String(number);
  const place = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(number))));
  const fixed = number.toFixed(Math.min(place, 12));
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return short.replace('-', '−');
}

/** Slack for printed powers: nameplates round, 9 V × 2.23 A = 20.07 W is sold as 20 W. */
export const PRINTED_SLACK = 0.01;
