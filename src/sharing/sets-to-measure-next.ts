import { exchangesOf } from './alike-ports.ts';
import { setKey } from './port-sets.ts';
import type { SetRow, ShareMatrix } from './share-matrix.ts';

/** One measurement worth making, and every missing set that it settles. */
export interface SetToMeasure {
  readonly ports: readonly string[];
  readonly key: string;
  /** Keys of the missing sets known after it, itself first; the others follow because their ports are alike. */
  readonly settles: readonly string[];
}

/**
 * The fewest sets to measure so that none is missing, those with fewest ports first. Sets that differ only by alike ports
 * are settled by one measurement, so one of each such family is enough and none can be left out. Where capacity is assured
 * the ports alone tell all: no port depends on the others. Empty where the matrix lists no missing sets.
 */
export function setsToMeasureNext(matrix: ShareMatrix): SetToMeasure[] {
  const missing = matrix.rows.filter((row) => row.standing === 'missing');
  const open = new Set(missing.map((row) => row.key));
  const chosen: SetToMeasure[] = [];
  for (const row of worthMeasuring(missing, matrix)) {
    if (!open.has(row.key)) continue;
    const family = exchangesOf(row.ports, matrix.alike, matrix.ports).map((exchange) => setKey(exchange.ports));
    const settles = [row.key, ...family.filter((key) => open.has(key))];
    for (const key of settles) open.delete(key);
    chosen.push({ ports: row.ports, key: row.key, settles });
  }
  return chosen;
}

function worthMeasuring(missing: readonly SetRow[], matrix: ShareMatrix): readonly SetRow[] {
  return matrix.isAssured ? missing.filter((row) => row.ports.length === 1) : missing;
}
