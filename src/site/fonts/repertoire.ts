/** Adds up ranges of code points, both ends included. */
function codePoints(...ranges: readonly (readonly [number, number])[]): string {
  return ranges.map(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join('')).join('');
}

/**
 * Characters that numbers, references, part numbers and titles may hold: fixed, so that the files depend on nothing that is published.
 * Latin with its accents, Greek, the dashes, spaces, primes, raised and lowered digits, arrows and signs of the trade.
 */
export const MONO_REPERTOIRE =
  codePoints([0x20, 0x7e], [0xa0, 0x17f], [0x391, 0x3a9], [0x3b1, 0x3c9], [0x2070, 0x2071], [0x2074, 0x208e]) +
  '\u2002\u2007\u2009\u200a\u202f‐‑‒–—―‘’‚“”„†‡•…‰′″‹›⁄€№℃™Ωµ→←↑↓↔∂∆∏∑−√∞∫≈≠≡≤≥·■□▲△▶▼▽◀◆◇○●✓✕';

/** Signs that neither text face has: direct current, diameter, earth, alternating current, half-moon of mixed current. */
export const SYMBOL_REPERTOIRE = '⎓⌀⏚⏦⌁⏻⏼⚠⚡';

/**
 * Characters of formulas. A browser draws a single letter of MathML in the italic letters of mathematics, which are code points of their
 * own; upright words and digits are the common ones.
 */
export const MATHS_REPERTOIRE =
  codePoints([0x20, 0x7e], [0x391, 0x3a9], [0x3b1, 0x3c9], [0x1d434, 0x1d467], [0x1d6e2, 0x1d71b]) +
  '\u00a0\u2002\u2003\u2009\u200aℎ−±×·÷√∑∏∫∂∞≈≠≤≥→ℓ′^ˆ¯˜';
