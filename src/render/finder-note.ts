import type { FinderQuery } from '../corpus/finder-query.ts';
import { columnWords } from '../corpus/finder-words.ts';

/** Rows that are drawn when more are asked for. */
export const MORE_ROWS = 200;

/** What stands under the finder's table: how many rows are drawn and in which order, and where the ticked devices are compared. */
export function finderNote({
  shown,
  count,
  sort,
  currency,
  chosen,
  compare,
}: {
  readonly shown: number;
  readonly count: number;
  readonly sort: FinderQuery['sort'];
  readonly currency: string | null;
  /** Addresses of the ticked devices. */
  readonly chosen: ReadonlySet<string>;
  /** Address of the comparison. */
  readonly compare: string;
}): string {
  const { long } = sort.by === 'name' ? { long: 'name' } : columnWords(sort.by, currency);
  const order = sort.by === 'name' ? 'by name' : `${sort.falling ? 'highest' : 'lowest'} ${long.toLowerCase()} first`;
  const compared =
    chosen.size < 2
      ? `<span>Tick two to four to compare them.</span>`
      : `<a href="${compare}?sheets=${[...chosen].map(encodeURIComponent).join(',')}">Compare ${String(chosen.size)} devices</a>`;
  const rest =
    count > shown ? ` <button type="button" class="as-link" data-all>Show ${String(Math.min(MORE_ROWS, count - shown))} more</button>` : '';
  return `<span>${String(Math.min(shown, count))} of ${String(count)} shown, ${order}.</span>${rest} ${compared} <span>This search has its own address.</span>`;
}
