import type { CorpusSheet } from '../corpus/corpus-sheet.ts';
import { markWith } from './mark.ts';

/** How a sheet's parts stand against their derating limits: counts with mark and word. */
export function ratingCounts({ over, straddles, within, withheld }: CorpusSheet): string {
  const judged = [
    ...(over > 0 ? [markWith('over', ` <span class="q">${over}</span> over`)] : []),
    ...(straddles > 0 ? [markWith('straddles', ` <span class="q">${straddles}</span> straddling`)] : []),
  ];
  if (judged.length > 0) return judged.join(' ');
  return within > 0 ? markWith('within', ' within') : markWith('withheld', withheld > 0 ? ' withheld' : ' none judged');
}
