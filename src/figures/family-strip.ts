import { percent, px } from './markup.ts';
import { STRESS_SCALE_END } from './stress-bar.ts';

/** What one row of a family's strip draws. */
export interface FamilyStrip {
  readonly marks: readonly { readonly ratio: number; readonly verdict: string }[];
  readonly limit: number | null;
}

/** Marks that still fit beside and above each other; more are drawn as their spread. */
const MOST_MARKS = 60;

/** Width of a column in which marks are piled up, as a ratio. */
const COLUMN = 0.012;

const MIDDLE = 17;

/**
 * One mark a sheet on the ratio scale 0 to 1.1, as wide as its cell: circles, triangles where over, piled up where they would cover each
 * other; limit tick with a cap, thin line at 1.00. A large family is its spread, the middle half wide. The numbers beside it say the same.
 */
export function familyStrip({ marks, limit }: FamilyStrip): string {
  const track = `<rect class="trk" y="${px(MIDDLE - 0.5)}" width="100%" height="1"/>`;
  const rated = `<rect class="one" x="${at(1)}" width="1" height="34"/>`;
  const body = marks.length > MOST_MARKS ? spread(marks) : piled(marks);
  const tick =
    limit === null ? '' : `<svg class="lim" x="${at(limit)}"><path class="halo" d="M0 6v22M-4 6h8"/><path d="M0 6v22M-4 6h8"/></svg>`;
  return `<svg class="stress family-strip" aria-hidden="true">${track}${rated}${tick}${body}</svg>`;
}

/** Axis of the strips: the ratio at every fifth. */
export function familyStripAxis(): string {
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map(
    (ratio) => `<text class="${ratio === 0 ? 'num' : 'num mid'}" x="${at(ratio)}" y="14">${ratio.toFixed(1)}</text>`,
  );
  return `<svg class="fig axis" aria-hidden="true" height="16" width="100%">${ticks.join('')}</svg>`;
}

function at(ratio: number): string {
  return percent(Math.min(ratio, STRESS_SCALE_END) / STRESS_SCALE_END);
}

/** Marks of one column go up and down in turn from the middle. */
function piled(marks: FamilyStrip['marks']): string {
  const heights = new Map<number, number>();
  return marks
    .map(({ ratio, verdict }) => {
      const column = Math.round(ratio / COLUMN);
      const height = heights.get(column) ?? 0;
      heights.set(column, height + 1);
      const step = height % 2 === 0 ? height / 2 : -(height + 1) / 2;
      const y = MIDDLE + Math.max(-13, Math.min(13, step * 5));
      const shape = verdict === 'over' ? '<path class="warn" d="M0-5 5 4H-5Z"/>' : '<circle class="med" r="3.6"/>';
      return `<svg class="one-sheet" x="${at(column * COLUMN)}" y="${px(y)}">${shape}</svg>`;
    })
    .join('');
}

function spread(marks: FamilyStrip['marks']): string {
  const ratios = marks.map(({ ratio }) => ratio).sort((one, other) => one - other);
  const of = (share: number): number => ratios[Math.round(share * (ratios.length - 1))] ?? 0;
  const bar = (from: number, to: number, height: number): string =>
    `<rect class="b" x="${at(from)}" width="${percent(Math.max(0.002, Math.min(to, STRESS_SCALE_END) - Math.min(from, STRESS_SCALE_END)) / STRESS_SCALE_END)}" y="${px(MIDDLE - height / 2)}" height="${px(height)}"/>`;
  return bar(of(0), of(1), 2) + bar(of(0.25), of(0.75), 8);
}
