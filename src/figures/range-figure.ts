import { px } from './markup.ts';

/** How far the figure's axis stays from its edges: half of a handle. */
const RANGE_INSET = 12;
const BASE = 34;
const LINE = 54;

/**
 * Spread of the register as small bars above a dimension line whose two arrows mark the chosen range. `low` and `high` are fractions
 * of the axis; bars outside are faint. The handles themselves are real inputs that lie over the arrows.
 */
export function rangeFigure(bins: readonly number[], low: number, high: number, width: number): string {
  const axis = width - 2 * RANGE_INSET;
  const tallest = Math.max(1, ...bins);
  const pitch = axis / Math.max(1, bins.length);
  const inside: string[] = [];
  const outside: string[] = [];
  for (const [index, count] of bins.entries()) {
    if (count === 0) continue;
    const height = Math.max(3, (count / tallest) * 28);
    const from = index / bins.length;
    const isInside = from < high + 1e-9 && (index + 1) / bins.length > low - 1e-9;
    (isInside ? inside : outside).push(
      `M${px(RANGE_INSET + index * pitch + 0.75)} ${BASE}v${px(-height)}h${px(Math.max(1, pitch - 1.5))}v${px(height)}Z`,
    );
  }
  const [x1, x2] = [RANGE_INSET + low * axis, RANGE_INSET + high * axis];
  const apart = x2 - x1;
  const tip = Math.min(9, apart / 2);
  return (
    `<svg class="fig range-fig" aria-hidden="true" width="${px(width)}" height="64" viewBox="0 0 ${px(width)} 64">` +
    `<path class="bin-out" d="${outside.join('')}"/><path class="bin-in" d="${inside.join('')}"/>` +
    `<path class="med" d="M${RANGE_INSET} ${BASE}.5H${px(width - RANGE_INSET)}"/>` +
    `<path class="med" d="M${px(x1)} ${BASE - 8}V62M${px(x2)} ${BASE - 8}V62M${px(x1)} ${LINE}H${px(x2)}"/>` +
    `<path class="solid" d="M${px(x1)} ${LINE}l${px(tip)} -3.6v7.2ZM${px(x2)} ${LINE}l${px(-tip)} -3.6v7.2Z"/></svg>`
  );
}
