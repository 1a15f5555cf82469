import type { Verdict } from '../derived/derived.ts';
import { percent } from './markup.ts';

/** Right end of the ratio scale. */
export const STRESS_SCALE_END = 1.1;

/** What a stress row draws: the interval of the ratio (null where withheld), the policy's limit, the verdict. */
export interface StressBar {
  readonly ratio: { readonly low: number; readonly nominal: number; readonly high: number } | null;
  readonly limit: number | null;
  readonly verdict: Verdict;
}

/**
 * Bar of stress over rating on the ratio scale 0 to 1.1, drawn as wide as its cell: bar, whisker over the interval, limit tick with a
 * cap, thin line at 1.00. A withheld ratio is a hatched bar. The words beside it say the same.
 */
export function stressBar(bar: StressBar): string {
  const at = (ratio: number): string => percent(Math.min(ratio, STRESS_SCALE_END) / STRESS_SCALE_END);
  const track = `<rect class="trk" y="10.5" width="100%" height="1"/>`;
  const rated = `<rect class="one" x="${at(1)}" width="1" height="22"/>`;
  const body = bar.ratio === null ? `<rect class="hx" y="6" width="${at(1)}" height="10"/>` : measured(bar, bar.ratio, at);
  const limit =
    bar.limit === null
      ? ''
      : `<svg class="lim" x="${at(bar.limit)}"><path class="halo" d="M0 2v18M-4 2h8"/><path d="M0 2v18M-4 2h8"/></svg>`;
  return `<svg class="stress" aria-hidden="true">${track}${rated}${body}${limit}</svg>`;
}

function measured(bar: StressBar, ratio: { low: number; nominal: number; high: number }, at: (ratio: number) => string): string {
  const rect = `<rect class="${bar.verdict === 'over' ? 'bc' : 'b'}" y="8" width="${at(ratio.nominal)}" height="6"/>`;
  if (ratio.high - ratio.low < 0.002) return rect;
  const line = `<line x1="${at(ratio.low)}" x2="${at(ratio.high)}" y1="11" y2="11"/>`;
  const cap = (value: number): string => `<line x1="${at(value)}" x2="${at(value)}" y1="5" y2="17"/>`;
  const whisker = line + cap(ratio.low) + cap(ratio.high);
  return `${rect}<g class="halo">${whisker}</g><g class="wh">${whisker}</g>`;
}
