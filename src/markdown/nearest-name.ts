/**
 * The name out of `names` that a slip of the pen most likely meant, or null when none is near: at most two letters
 * inserted, left out, exchanged or swapped, and never more than a third of the word.
 */
export function nearestName(written: string, names: Iterable<string>): string | null {
  const wanted = written.toLowerCase();
  let best: { readonly name: string; readonly distance: number } | null = null;
  for (const name of names) {
    const distance = editDistance(wanted, name.toLowerCase());
    const allowed = Math.min(2, Math.max(1, Math.floor(Math.max(wanted.length, name.length) / 3)));
    if (distance <= allowed && (best === null || distance < best.distance)) best = { name, distance };
  }
  return best?.name ?? null;
}

/** Ends a message: ` — did you mean "density"?`, or nothing. */
export function didYouMean(written: string, names: Iterable<string>): string {
  const nearest = nearestName(written, names);
  return nearest === null ? '' : `; did you mean "${nearest}"?`;
}

/** Optimal string alignment distance (a swap of neighbours counts one). */
function editDistance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (previous[j - 1] ?? 0) + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}
