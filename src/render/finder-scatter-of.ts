import type { FinderQuery } from '../corpus/finder-query.ts';
import type { FinderRow } from '../corpus/finder-row.ts';
import { finderScatter } from '../figures/finder-scatter.ts';

/** Scatter of all devices whose size and rating are known; empty where fewer than two are. */
export function scatterOf(rows: readonly FinderRow[], found: ReadonlySet<FinderRow>, ranges: FinderQuery['ranges'], width: number): string {
  const points = rows.flatMap((row) => {
    const { volume, watts, kind, name } = row;
    return volume === null || watts === null || volume <= 0 || watts <= 0 ? [] : [{ name, kind, volume, watts, isFound: found.has(row) }];
  });
  if (points.length < 2) return '';
  const count = points.filter((point) => point.isFound).length;
  const description = `${String(count)} of ${String(points.length)} devices with a known size are found. The table below has the numbers.`;
  return finderScatter(points, { volume: ranges.volume ?? null, watts: ranges.watts ?? null }, [width, width < 600 ? 320 : 452], {
    id: 'scatter',
    description,
  });
}
