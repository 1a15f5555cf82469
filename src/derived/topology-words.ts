import type { Entry } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';

/**
 * The stages in the order power flows, in words: "bridge · boost PFC · LLC half bridge · 3 × buck". Equal ones are counted where
 * the first of them stands; blocks that do not tell designs apart (input filter) are left out.
 */
export function topologyWords(entry: Entry): string {
  const counts = new Map<string, number>();
  for (const stage of entry.stages) {
    const short = stageOf(stage.kind)?.short ?? null;
    if (short !== null) counts.set(short, (counts.get(short) ?? 0) + 1);
  }
  return [...counts].map(([short, count]) => (count === 1 ? short : `${count} × ${short}`)).join(' · ');
}
