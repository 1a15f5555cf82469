import type { EfficiencyRun } from './efficiency-figures.ts';
import { nearestTo, roomAround } from './run-mean.ts';

/**
 * Why the loads of several ports are not those of a test, which loads each of them by its own rating: the first load at which one of them
 * carried more or less than that. Null for one port, and where the spread is the one that is asked for.
 */
export function unevenSpread(run: EfficiencyRun, shares: readonly number[]): string | null {
  if (run.ports.length < 2) return null;
  for (const share of shares) {
    const point = nearestTo(run.points, share);
    if (point === null) continue;
    if (point.spread === null) return 'how the load was spread over the ports is not said';
    if (point.spread.some((own) => Math.abs(own - share) > roomAround(share) + 1e-9)) {
      const words = point.spread.map((own, index) => `${run.ports[index]?.id ?? ''} ${percent(own)}`).join(', ');
      return `at ${percent(share)} of the load the ports carried ${words} of theirs`;
    }
  }
  return null;
}

function percent(share: number): string {
  return `${String(Math.round(share * 100))} %`;
}
