import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutCallouts } from '../../../src/figures/photo-frame/callout-layout.ts';
import { frameSize, zoneLetters, type PictureSize } from '../../../src/figures/photo-frame/frame-size.ts';
import type { PlacedCallout } from '../../../src/figures/photo-frame/placed-callout.ts';
import { distance, segmentsMeet, type Point, type Segment } from '../../../src/figures/photo-frame/segment.ts';

const SEED = { seed: 20_261_125, numRuns: 150 };
const BOARD = frameSize({ width: 1600, height: 1000 }).picture;
const UPRIGHT = frameSize({ width: 3000, height: 4000 }).picture;
const place = fc.record({ x: fc.double({ min: 0, max: 1, noNaN: true }), y: fc.double({ min: 0, max: 1, noNaN: true }) });
const onGrid = fc.record({ x: fc.integer({ min: 0, max: 6 }).map((n) => n / 6), y: fc.integer({ min: 0, max: 4 }).map((n) => n / 4) });
const crowd = fc.record({ x: fc.double({ min: 0.48, max: 0.52, noNaN: true }), y: fc.double({ min: 0.48, max: 0.52, noNaN: true }) });

/** A leader as its two pieces: inside the picture, and straight out to the circle's edge. */
function pieces({ dot, gate, circle }: PlacedCallout): readonly Segment[] {
  return [
    { from: dot, to: gate },
    { from: gate, to: circle },
  ];
}

function meeting(placed: readonly PlacedCallout[]): readonly string[] {
  return placed.flatMap((one, i) =>
    placed
      .slice(i + 1)
      .filter((other) => pieces(one).some((a) => pieces(other).some((b) => segmentsMeet(a, b))))
      .map((other) => `${one.index} meets ${other.index}`),
  );
}

function overlapping(placed: readonly PlacedCallout[]): readonly string[] {
  return placed.flatMap((one, i) =>
    placed
      .slice(i + 1)
      .filter((other) => distance(one.circle, other.circle) < 38)
      .map((other) => `${one.index} over ${other.index}`),
  );
}

function overLetters(picture: PictureSize, placed: readonly PlacedCallout[]): readonly string[] {
  const boxes = zoneLetters(picture);
  return placed.flatMap(({ index, gate, circle }) =>
    boxes
      .filter(({ x, y }) => {
        const isVertical = gate.x === circle.x;
        const outside = isVertical
          ? Math.sign(y - gate.y) === Math.sign(circle.y - gate.y)
          : Math.sign(x - gate.x) === Math.sign(circle.x - gate.x);
        const aside = isVertical ? Math.abs(x - gate.x) : Math.abs(y - gate.y);
        const along = isVertical ? Math.abs(y - gate.y) : Math.abs(x - gate.x);
        return outside && along < 30 && aside < 8;
      })
      .map(({ text }) => `${index} over ${text}`),
  );
}

function faults(picture: PictureSize, places: readonly Point[]): readonly string[] {
  const placed = layoutCallouts(picture, places);
  const lost = placed.length === places.length ? [] : [`${places.length - placed.length} lost`];
  return [...lost, ...meeting(placed), ...overlapping(placed), ...overLetters(picture, placed)];
}

describe('callouts around a photo', () => {
  test.each([
    ['anywhere', place],
    ['on a grid of equal places', onGrid],
    ['in a crowd', crowd],
  ])('up to thirty %s: no leaders meet, no circles overlap, no letter is covered, none is lost', (_, where) => {
    fc.assert(
      fc.property(fc.array(where, { maxLength: 30 }), fc.constantFrom(BOARD, UPRIGHT), (places, picture) => {
        expect(faults(picture, places)).toEqual([]);
      }),
      SEED,
    );
  });

  test.each([
    ['thirty at one place', Array.from({ length: 30 }, () => ({ x: 0.5, y: 0.5 }))],
    ['thirty in a corner', Array.from({ length: 30 }, () => ({ x: 0, y: 0 }))],
    ['thirty in one row', Array.from({ length: 30 }, (_, n) => ({ x: n / 29, y: 0.375 }))],
    ['thirty in one column', Array.from({ length: 30 }, (_, n) => ({ x: 0.25, y: n / 29 }))],
    ['on the diagonal', Array.from({ length: 30 }, (_, n) => ({ x: n / 29, y: n / 29 }))],
    ['every zone once', Array.from({ length: 24 }, (_, n) => ({ x: ((n % 6) + 0.5) / 6, y: (Math.floor(n / 6) + 0.5) / 4 }))],
  ])('%s', (_, places) => {
    expect(faults(BOARD, places)).toEqual([]);
  });

  test('parts that stand apart are led out straight, and no dot moves by more than 9 px', () => {
    const places = [0.188, 0.135, 0.62, 0.279, 0.299, 0.812, 0.801].map((x, n) => ({
      x,
      y: [0.448, 0.512, 0.551, 0.237, 0.7, 0.412, 0.224][n] ?? 0,
    }));
    for (const { index, dot, gate } of layoutCallouts(BOARD, places)) {
      expect(dot.x === gate.x || dot.y === gate.y).toBe(true);
      const wanted = places[index];
      expect(distance(dot, { x: (wanted?.x ?? 0) * BOARD.width, y: (wanted?.y ?? 0) * BOARD.height })).toBeLessThanOrEqual(9);
    }
  });

  test('the same places give the same drawing', () => {
    fc.assert(
      fc.property(fc.array(place, { maxLength: 30 }), (places) => {
        expect(layoutCallouts(BOARD, places)).toEqual(layoutCallouts(BOARD, [...places]));
      }),
      { ...SEED, numRuns: 30 },
    );
  });
});
