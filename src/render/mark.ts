import { escapeText } from '../figures/markup.ts';
import { mark } from '../figures/mark.ts';
import type { JudgementMark } from '../tables/table.ts';

/** A mark with its word, which it never goes without. `html` is markup, escaped by the caller. */
export function markWith(name: JudgementMark, html: string): string {
  return `<span class="mk ${name}">${mark(name)}${html}</span>`;
}

/** Marks and counts of one sheet's ratings, as register rows show them. */
export function ratingMarks(counts: {
  readonly over: number;
  readonly straddles: number;
  readonly withheld: number;
  readonly within: number;
}): string {
  const shown = (['over', 'straddles'] as const).filter((name) => counts[name] > 0);
  if (shown.length > 0)
    return shown
      .map((name) => markWith(name, `<span class="mono">${counts[name]}</span><span class="vh"> ${escapeText(name)}</span>`))
      .join(' ');
  if (counts.within > 0) return markWith('within', 'within');
  return counts.withheld > 0 ? markWith('withheld', 'withheld') : '<span class="faded">– no rating judged</span>';
}
