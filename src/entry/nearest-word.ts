/** The candidate that is closest to a word by single-letter slips; null where none is close enough to be meant. */
export function nearestWord(word: string, candidates: Iterable<string>): string | null {
  const wanted = word.toLowerCase();
  let best: string | null = null;
  let bestSlips = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of candidates) {
    const slips = slipsBetween(wanted, candidate.toLowerCase(), bestSlips);
    if (slips < bestSlips) {
      best = candidate;
      bestSlips = slips;
    }
  }
  return best;
}

/** "Did you mean …?" for the nearest candidate, or nothing. */
export function didYouMean(word: string, candidates: Iterable<string>): string | null {
  const nearest = nearestWord(word, candidates);
  return nearest === null ? null : `Did you mean "${nearest}"?`;
}

/** Insertions, deletions, replacements and swaps of neighbours between two words; `limit` where there are as many or more. */
function slipsBetween(one: string, other: string, limit: number): number {
  if (Math.abs(one.length - other.length) >= limit) return limit;
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      const change = (last[column - 1] ?? 0) + (same ? 0 : 1);
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const swap = swapped && row > 1 && column > 1 ? (beforeLast[column - 2] ?? 0) + 1 : limit;
      current.push(Math.min((last[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1, change, swap));
    }
    beforeLast = last;
    last = current;
  }
  return Math.min(limit, last[other.length] ?? limit);
}
