import type { CalloutItem } from '../../../src/figures/photo-frame/callout-item.ts';

/** Parts spread over a board as evenly as parts are: some alone, some close together (steps of the golden section, drawn to the left). */
export function spreadParts(count: number): readonly CalloutItem[] {
  return Array.from({ length: count }, (_, index) => {
    const [across, down] = [(0.5 + index * 0.6180339887) % 1, (0.5 + index * 0.7548776662) % 1];
    return {
      ...{ number: index + 1, title: `R${index + 1}`, rowAnchor: `part-R${index + 1}`, anchor: `photo-1-part-R${index + 1}` },
      ...{ x: 0.06 + 0.88 * across ** 1.4, y: 0.08 + 0.84 * down },
    };
  });
}

export const THIRTY_PARTS: readonly CalloutItem[] = spreadParts(30);
