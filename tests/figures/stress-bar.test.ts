import { describe, expect, it } from 'vitest';
import { stressBar } from '../../src/figures/stress-bar.ts';
import { shareBar } from '../../src/figures/share-bar.ts';

/** Share of the 0 to 1.1 scale as the figure writes it. */
const at = (ratio: number): string => `${Math.round((ratio / 1.1) * 10000) / 100}%`;

describe('a bar of stress over rating', () => {
  it('ends at the ratio, with its limit and the rating on the same scale', () => {
    const svg = stressBar({ ratio: { low: 0.9, nominal: 0.94, high: 0.95 }, limit: 0.9, verdict: 'over' });
    expect(svg).toContain(`<rect class="bc" y="8" width="${at(0.94)}"`);
    expect(svg).toContain(`<svg class="lim" x="${at(0.9)}"`);
    expect(svg).toContain(`<rect class="one" x="${at(1)}"`);
    expect(svg).toContain(`x1="${at(0.9)}" x2="${at(0.95)}"`);
  });

  it('is drawn in the caution colour only when it is over', () => {
    for (const verdict of ['within', 'straddles'] as const) {
      expect(stressBar({ ratio: { low: 0.5, nominal: 0.5, high: 0.5 }, limit: 0.8, verdict })).not.toContain('class="bc"');
    }
  });

  it('is hatched where the verdict is withheld', () => {
    const svg = stressBar({ ratio: null, limit: 0.8, verdict: 'withheld' });
    expect(svg).toContain('class="hx"');
    expect(svg).not.toContain('class="b"');
  });

  it('never leaves its cell, however far over the rating', () => {
    expect(stressBar({ ratio: { low: 3, nominal: 4, high: 5 }, limit: null, verdict: 'over' })).toContain('width="100%"');
  });
});

describe('a bar in a cell of the share matrix', () => {
  it('says by its kind how the share is known', () => {
    expect(shareBar({ fraction: 0.65, tick: 1, style: 'filled' })).toContain('<rect class="b" y="3" width="65%"');
    expect(shareBar({ fraction: 0.65, tick: 1, style: 'open' })).toContain('class="bo"');
    expect(shareBar({ fraction: 0.65, tick: null, style: 'dashed' })).toContain('class="bd"');
    expect(shareBar({ fraction: 0.65, tick: null, style: 'dashed' })).not.toContain('class="tk"');
  });
});
