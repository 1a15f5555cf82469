import type { ShareMatrix } from './share-matrix.ts';

/** A set whose shares depend on the order of plugging, and how many of its orders are known. */
export interface OrderedSet {
  readonly key: string;
  readonly known: number;
  /** All orders of its ports: 2 for two ports, 6 for three. */
  readonly all: number;
}

/** The sets that the author gives by order of plugging, with what is known of them. */
export function knownOrders(matrix: ShareMatrix): OrderedSet[] {
  const ordered = new Map<string, OrderedSet>();
  for (const row of matrix.rows) {
    if (row.order === null) continue;
    const known = (ordered.get(row.key)?.known ?? 0) + 1;
    ordered.set(row.key, { key: row.key, known, all: factorial(row.ports.length) });
  }
  return [...ordered.values()];
}

function factorial(count: number): number {
  return count <= 1 ? 1 : count * factorial(count - 1);
}
