import type { SetRow } from '../sharing/share-matrix.ts';
import { PRINTED_SLACK } from './rounded.ts';

/**
 * Ports whose equal shares, taken as one pool, bring the sum of a row back within the total; null where the row is within
 * it anyway or no such pool helps. The smallest equal shares are tried first: pools are printed for the small ports.
 */
export function poolThatFits(row: SetRow, total: number): readonly string[] | null {
  if (row.sum === null || !isAbove(row.sum.nominal, total)) return null;
  const sum = row.sum.nominal;
  const own = row.shares.filter((share) => share.pool.length === 1);
  const powers = [...new Set(own.map((share) => share.power.nominal))].sort((one, other) => one - other);
  for (const power of powers) {
    const alike = own.filter((share) => share.power.nominal === power);
    const partOfTheRow = alike.length > 1 && alike.length < row.shares.length;
    if (partOfTheRow && !isAbove(sum - power * (alike.length - 1), total)) return alike.map((share) => share.port);
  }
  return null;
}

/** Above the total by more than printed powers are rounded. */
export function isAbove(sum: number, total: number): boolean {
  return sum > total * (1 + PRINTED_SLACK);
}
