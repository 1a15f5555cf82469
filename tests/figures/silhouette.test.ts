import { describe, expect, it } from 'vitest';
import { lineUp, silhouette, silhouetteScale } from '../../src/figures/silhouette.ts';

describe('silhouettes of a list', () => {
  it('share one scale, at which the largest still fits', () => {
    const scale = silhouetteScale(
      [
        { length: 150, height: 27 },
        { length: 40, height: 60 },
      ],
      120,
      36,
    );
    expect(150 * scale).toBeLessThanOrEqual(120);
    expect(60 * scale).toBeLessThanOrEqual(36);
    const width = (svg: string): number => Number(/<rect[^>]* width="([\d.]+)"/.exec(svg)?.[1]);
    const [long, short] = [silhouette({ length: 150, height: 27 }, scale, 120, 36), silhouette({ length: 40, height: 60 }, scale, 120, 36)];
    // The line of the outline takes 2 px of each.
    expect(Math.abs((width(long) + 2) / (width(short) + 2) - 150 / 40)).toBeLessThan(0.01);
  });

  it('of a line-up stand inside its width', () => {
    const devices = Array.from({ length: 14 }, (_, index) => ({
      label: 'x',
      watts: 20 + index,
      front: { length: 90, height: 30 },
      ports: [],
      newest: false,
    }));
    const { body } = lineUp(devices, 1146);
    const ends = [...body.matchAll(/<rect class="med" x="([\d.]+)"[^>]* width="([\d.]+)"/g)].map(
      (match) => Number(match[1]) + Number(match[2]),
    );
    expect(ends).toHaveLength(14);
    expect(Math.max(...ends)).toBeLessThanOrEqual(1146);
  });
});
