import { DIMENSION_NAMES } from './dimension-names.ts';
import type { Dimension } from './dimension.ts';
import type { Quantity } from './quantity.ts';

/** Two writings of one size differ by rounding twice: 2 % for sizes (68 × 52 × 29 mm against 2.7 × 2.0 × 1.1 in differ by 0.9 %), else 1 %. */
const ALLOWED_FOR_SIZES = 0.02;
const ALLOWED = 0.01;

const SIZES: ReadonlySet<Dimension> = new Set(['length', 'area', 'volume', 'power density'] as const);

/** Why two writings of one quantity contradict each other, naming both; null where they agree. Common practice, no source. */
export function disagreement(one: Quantity, other: Quantity): string | null {
  const allowed = SIZES.has(one.dimension) ? ALLOWED_FOR_SIZES : ALLOWED;
  const larger = Math.max(Math.abs(one.nominal), Math.abs(other.nominal));
  const apart = Math.abs(one.nominal - other.nominal);
  // Half of the last written digit of either is rounding, not contradiction.
  if (apart <= allowed * larger || apart <= one.resolution / 2 + other.resolution / 2) return null;
  const percent = ((100 * apart) / larger).toFixed(apart > larger / 10 ? 0 : 1);
  return `${withUnit(one)} and ${withUnit(other)} are ${percent} % apart as ${DIMENSION_NAMES[one.dimension].phrase}; ${100 * allowed} % is allowed for rounding`;
}

/** As written, with its unit where another place of the text holds it. */
function withUnit(quantity: Quantity): string {
  return /[\p{L}"%°]/u.test(quantity.written) ? quantity.written : `${quantity.written} ${quantity.unit}`;
}
