import type { Bar } from '../tables/table.ts';
import { percent } from './markup.ts';

/** Bar at the foot of a cell on the column's one scale: filled measured, open printed, dashed implied; tick at the port's limit. */
export function shareBar(bar: Bar): string {
  const width = percent(Math.min(1, Math.max(0, bar.fraction)));
  const shape =
    bar.style === 'filled'
      ? `<rect class="b" y="3" width="${width}" height="6"/>`
      : `<rect class="${bar.style === 'open' ? 'bo' : 'bd'}" x=".75" y="3.75" width="${width}" height="4.5"/>`;
  const tick = bar.tick === null ? '' : `<rect class="tk" x="${percent(Math.min(1, bar.tick))}" width="1.5" height="11"/>`;
  return `<svg class="sbar" aria-hidden="true">${shape}${tick}</svg>`;
}
