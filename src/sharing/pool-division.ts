/** A device on a pool: what it needs, the most it can take there, and whether that would be all it needs. */
export interface Claim {
  readonly watts: number;
  /** Most watts that the port's offers carry to it: never more than it needs. */
  readonly most: number;
  /** Whether `most` is its need in full, at the voltage that it asks for. */
  readonly isMeetable: boolean;
}

/** Two powers that differ by less are the same: sums of binary fractions. */
const SAME = 1e-9;

/**
 * The best division of a pool: first as many needs met as can be, then the least fraction of a need as large as can be, then
 * all that can be taken. How a real pool divides is up to device and devices, so this is the best case. Exact.
 *
 * @returns watts for each claim, in order
 */
export function dividePool(pool: number, claims: readonly Claim[]): number[] {
  if (claims.length === 1) return claims.map(({ most }) => Math.min(most, pool));
  const divisions = subsets(claims.length)
    .map((met) => divisionWith(new Set(met), pool, claims))
    .filter((division) => division !== null);
  return divisions.reduce((best, next) => (isBetter(next, best, claims) ? next : best));
}

/** A division that meets the claims of `met` in full and levels the rest; null where these cannot be met. */
function divisionWith(met: ReadonlySet<number>, pool: number, claims: readonly Claim[]): number[] | null {
  const chosen = claims.filter((_, index) => met.has(index));
  const left = pool - chosen.reduce((sum, { most }) => sum + most, 0);
  if (chosen.some(({ isMeetable }) => !isMeetable) || left < -SAME) return null;
  const level = levelOf(
    Math.max(0, left),
    claims.filter((_, index) => !met.has(index)),
  );
  const granted = claims.map((claim, index) => (met.has(index) ? claim.most : Math.min(claim.most, level * claim.watts)));
  return filledUp(granted, pool, claims);
}

/** The fraction of its need up to which every claim can be filled: the water level over the claims as vessels of width `watts`. */
function levelOf(pool: number, claims: readonly Claim[]): number {
  let left = pool;
  let open = [...claims].sort((one, other) => one.most / one.watts - other.most / other.watts);
  for (let claim = open[0]; claim !== undefined; claim = open[0]) {
    const width = open.reduce((sum, { watts }) => sum + watts, 0);
    if (left / width <= claim.most / claim.watts) return left / width;
    left -= claim.most;
    open = open.slice(1);
  }
  return Infinity;
}

/** What the level left over goes to whoever can still take it. */
function filledUp(granted: readonly number[], pool: number, claims: readonly Claim[]): number[] {
  let left = pool - granted.reduce((sum, watts) => sum + watts, 0);
  return granted.map((watts, index) => {
    const more = Math.max(0, Math.min(left, (claims[index]?.most ?? watts) - watts));
    left -= more;
    return watts + more;
  });
}

function isBetter(one: readonly number[], other: readonly number[], claims: readonly Claim[]): boolean {
  const scores = [one, other].map((granted) => [
    claims.filter((claim, index) => claim.isMeetable && (granted[index] ?? 0) >= claim.most - SAME).length,
    // A device that finds no voltage here gets nothing in any division, so it does not count as the worst-off one.
    Math.min(1, ...claims.flatMap((claim, index) => (claim.most > 0 ? [(granted[index] ?? 0) / claim.watts] : []))),
    granted.reduce((sum, watts) => sum + watts, 0),
  ]);
  for (const [place, score] of (scores[0] ?? []).entries()) {
    const difference = score - (scores[1]?.[place] ?? 0);
    if (Math.abs(difference) > SAME) return difference > 0;
  }
  return false;
}

function subsets(count: number): number[][] {
  return Array.from({ length: 2 ** count }, (_, mask) =>
    Array.from({ length: count }, (__, index) => index).filter((index) => (mask >> index) & 1),
  );
}
