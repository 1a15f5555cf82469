import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossesBox, holds, type Box } from '../../../src/figures/photo-frame/box.ts';
import { layoutCallouts, type CalloutLayout } from '../../../src/figures/photo-frame/callout-layout.ts';
import { CIRCLE_RADIUS, frameSize, MARGIN, zoneLetters, type PictureSize } from '../../../src/figures/photo-frame/frame-size.ts';
import type { DrawnLength, PlacedLabel } from '../../../src/figures/photo-frame/length-label.ts';
import { layoutNear, NEAR_RADIUS, nearLeader } from '../../../src/figures/photo-frame/near-layout.ts';
import { photoAround } from '../../../src/figures/photo-frame/photo-around.ts';
import { photoNear } from '../../../src/figures/photo-frame/photo-near.ts';
import { distance, pointApart, segmentsMeet, type Point, type Segment } from '../../../src/figures/photo-frame/segment.ts';

const SEED = { seed: 20_261_125, numRuns: 150 };
const BOARD = frameSize({ width: 1600, height: 1000 }).picture;
const UPRIGHT = frameSize({ width: 3000, height: 4000 }).picture;
const unit = fc.double({ min: 0, max: 1, noNaN: true });
const place = fc.record({ x: unit, y: unit });
const onGrid = fc.record({ x: fc.integer({ min: 0, max: 6 }).map((n) => n / 6), y: fc.integer({ min: 0, max: 4 }).map((n) => n / 4) });
const crowd = fc.record({ x: fc.double({ min: 0.48, max: 0.52, noNaN: true }), y: fc.double({ min: 0.48, max: 0.52, noNaN: true }) });
const name = fc.constantFrom('creepage T1', 'slot', 'heat spreader of the primary side to the secondary capacitor');
const length: fc.Arbitrary<DrawnLength> = fc.record({
  ...{ name, value: fc.constantFrom('6.4 mm', '12 mm'), isScale: fc.constant(false) },
  from: fc.tuple(unit, unit),
  to: fc.tuple(unit, unit),
});

/** A leader as its two pieces: inside the picture, and straight out to the circle. */
interface Led {
  readonly index: number;
  readonly pieces: readonly Segment[];
  readonly circle: Point;
}

function led(index: number, dot: Point, gate: Point, circle: Point): Led {
  return { index, circle, pieces: [{ from: dot, to: gate }, { from: gate, to: circle }] }; // prettier-ignore
}

function pairFaults(all: readonly Led[], radius: number): readonly string[] {
  return all.flatMap((one, i) =>
    all.flatMap((other, j): readonly string[] => {
      const through = i !== j && one.pieces.some((piece) => pointApart(other.circle, piece) < radius);
      const meet = i < j && one.pieces.some((a) => other.pieces.some((b) => segmentsMeet(a, b)));
      const overlap = i < j && distance(one.circle, other.circle) < 2 * radius;
      return [
        ...(through ? [`${one.index} goes through the circle of ${other.index}`] : []),
        ...(meet ? [`${one.index} meets ${other.index}`] : []),
        ...(overlap ? [`${one.index} over ${other.index}`] : []),
      ];
    }),
  );
}

function labelFaults(labels: readonly (PlacedLabel | null)[], all: readonly Led[], { width, height }: PictureSize): readonly string[] {
  const picture = { left: 0, top: 0, right: width, bottom: height };
  const drawn = labels.filter((label) => label !== null);
  return drawn.flatMap(({ box, lines }, at) => [
    ...all.filter(({ pieces }) => pieces.some((piece) => crossesBox(piece, box))).map(({ index }) => `${index} crosses "${lines.map(({ text }) => text).join(' ')}"`),
    ...(holds(picture, box) ? [] : ['a label outside']),
    ...drawn.slice(at + 1).filter((other) => overlap(box, other.box)).map(() => 'a label over another'),
  ]); // prettier-ignore
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function letterFaults(picture: PictureSize, all: readonly Led[]): readonly string[] {
  const boxes = zoneLetters(picture).map(({ text, x, y }) => ({ text, box: { left: x - 5, right: x + 5, top: y - 7, bottom: y + 7 } }));
  return all.flatMap(({ index, pieces }) =>
    boxes.filter(({ box }) => pieces.some((piece) => crossesBox(piece, box))).map(({ text }) => `${index} over ${text}`),
  );
}

function isWithin({ x, y }: Point, { width, height }: PictureSize, beyond: number): boolean {
  return x >= -beyond && x <= width + beyond && y >= -beyond && y <= height + beyond;
}

function outsideFaults({ callouts }: CalloutLayout, picture: PictureSize): readonly string[] {
  return callouts
    .filter(({ dot, gate, circle }) => !isWithin(dot, picture, 0) || !isWithin(gate, picture, 0) || !isWithin(circle, picture, MARGIN - CIRCLE_RADIUS))
    .map(({ index }) => `${index} outside`); // prettier-ignore
}

function wideFaults(picture: PictureSize, places: readonly Point[], lengths: readonly DrawnLength[] = []): readonly string[] {
  const layout = layoutCallouts(picture, places, lengths);
  const all = layout.callouts.map(({ index, dot, gate, circle }) => led(index, dot, gate, circle));
  return [
    ...(all.length === places.length ? [] : [`${places.length - all.length} lost`]),
    ...pairFaults(all, CIRCLE_RADIUS + 1),
    ...letterFaults(picture, all),
    ...labelFaults(layout.labels, all, picture),
    ...outsideFaults(layout, picture),
  ];
}

/** Figures above a narrow picture, in its px. */
function figuresAbove(width: number): readonly Box[] {
  return Array.from({ length: 6 }, (_, index) => ((index + 0.5) * width) / 6).map((x) => ({
    left: x - 5,
    right: x + 5,
    top: -20,
    bottom: -6,
  }));
}

function narrowFaults(picture: PictureSize, places: readonly Point[], lengths: readonly DrawnLength[] = []): readonly string[] {
  const layout = layoutNear(picture, places, lengths);
  const all = layout.marks.map((mark): Led => {
    const leader = nearLeader(mark);
    const { index, dot, gate, circle } = mark;
    return gate === null ? { index, circle, pieces: leader === null ? [] : [leader] } : led(index, dot, gate, circle);
  });
  const figures = all.flatMap(({ index, pieces }) =>
    pieces.some((piece) => figuresAbove(layout.size.width).some((box) => crossesBox(piece, box))) ? [`${index} over a figure`] : [],
  );
  const beside = layout.kind === 'in rows' ? 76 : 0;
  const outside = layout.marks.filter(
    ({ dot, circle }) => !isWithin(dot, layout.size, 0) || circle.x < 4 || circle.x > layout.size.width - 4 || !isWithin(circle, layout.size, beside - NEAR_RADIUS),
  ); // prettier-ignore
  return [
    ...(all.length === places.length ? [] : [`${places.length - all.length} lost`]),
    ...pairFaults(all, NEAR_RADIUS),
    ...labelFaults(layout.labels, all, layout.size),
    ...(layout.kind === 'in rows' ? figures : []),
    ...outside.map(({ index }) => `${index} outside`),
  ];
}

const WHERE = [
  ['anywhere', place],
  ['on a grid of equal places', onGrid],
  ['in a crowd', crowd],
] as const;

describe.each([
  ['a wide sheet', wideFaults],
  ['a phone', narrowFaults],
])('thirty callouts and three lengths on %s', (_, faults) => {
  test.each(WHERE)(
    'up to thirty %s: no leaders meet or go through a circle, none crosses a label or a zone letter, all is within the frame, none is lost',
    (__, where) => {
      fc.assert(
        fc.property(
          fc.array(where, { maxLength: 30 }),
          fc.array(length, { maxLength: 3 }),
          fc.constantFrom(BOARD, UPRIGHT),
          (places, lengths, picture) => {
            expect(faults(picture, places, lengths)).toEqual([]);
          },
        ),
        SEED,
      );
    },
  );

  test.each(WHERE)('thirty %s, no fewer', (__, where) => {
    fc.assert(
      fc.property(
        fc.array(where, { minLength: 30, maxLength: 30 }),
        fc.array(length, { minLength: 3, maxLength: 3 }),
        fc.constantFrom(BOARD, UPRIGHT),
        (places, lengths, picture) => {
          expect(faults(picture, places, lengths)).toEqual([]);
        },
      ),
      SEED,
    );
  });

  test.each([
    ['thirty at one place', Array.from({ length: 30 }, () => ({ x: 0.5, y: 0.5 }))],
    ['thirty in a corner', Array.from({ length: 30 }, () => ({ x: 0, y: 0 }))],
    ['thirty in a row', Array.from({ length: 30 }, (__, n) => ({ x: (n + 0.5) / 30, y: 0.5 }))],
    ['thirty in a column', Array.from({ length: 30 }, (__, n) => ({ x: 0.5, y: (n + 0.5) / 30 }))],
    ['a grid of five by six', Array.from({ length: 30 }, (__, n) => ({ x: ((n % 6) + 0.5) / 6, y: (Math.floor(n / 6) + 0.5) / 5 }))],
    ['places on the edge of the picture', Array.from({ length: 20 }, (__, n) => ({ x: n % 2, y: Math.floor(n / 2) / 10 }))],
    ['both sides of a letter', Array.from({ length: 9 }, (__, n) => ({ x: 0.01, y: n / 8 }))],
  ])('%s', (__, places) => {
    for (const picture of [BOARD, UPRIGHT]) expect(faults(picture, places)).toEqual([]);
  });
});

describe('callouts around a photo', () => {
  test('parts that stand apart are led out straight, and no dot moves by more than 9 px', () => {
    const places = [0.188, 0.135, 0.62, 0.279, 0.299, 0.812, 0.801].map((x, n) => ({
      x,
      y: [0.448, 0.512, 0.551, 0.237, 0.7, 0.412, 0.224][n] ?? 0,
    }));
    for (const { index, dot, gate } of layoutCallouts(BOARD, places, []).callouts) {
      expect(dot.x === gate.x || dot.y === gate.y).toBe(true);
      const wanted = places[index];
      expect(distance(dot, { x: (wanted?.x ?? 0) * BOARD.width, y: (wanted?.y ?? 0) * BOARD.height })).toBeLessThanOrEqual(9);
    }
  });

  test('the label of a length stands above its line where nothing is in the way, and a leader that would cross it goes another way', () => {
    const slot: DrawnLength = { name: 'slot', value: '2.4 mm', isScale: false, from: [0.48, 0.4], to: [0.52, 0.4] };
    const [alone] = layoutCallouts(BOARD, [], [slot]).labels;
    expect(alone?.tie).toBeNull();
    expect(alone?.box.bottom).toBeLessThan(0.4 * BOARD.height);
    const under = layoutCallouts(BOARD, [{ x: 0.5, y: 0.45 }], [slot]);
    expect(under.labels).toEqual([alone]);
    expect(under.callouts[0]?.side).not.toBe('top');
  });

  test('of a length between many parts the value stands in the narrow drawing, where name and value find no room', () => {
    const places = Array.from({ length: 30 }, (_, n) => ({ x: ((n % 6) + 0.5) / 6, y: (Math.floor(n / 6) + 0.5) / 5 }));
    const gap: DrawnLength = { name: 'bare band of the barrier', value: '6.4 mm', isScale: false, from: [0.3, 0.4], to: [0.36, 0.4] };
    const [wide] = layoutCallouts(BOARD, places, [gap]).labels;
    expect(wide?.lines.map(({ text }) => text).join(' ')).toBe('bare band of the barrier 6.4 mm');
    const [narrow] = layoutNear(BOARD, places, [gap]).labels;
    expect(narrow?.lines.at(-1)?.text).toContain('6.4 mm');
  });

  test('a few parts have their circles on them on a phone; many are led out of the picture', () => {
    expect(layoutNear(BOARD, [{ x: 0.2, y: 0.3 }, { x: 0.7, y: 0.6 }], []).kind).toBe('on the parts'); // prettier-ignore
    const many = Array.from({ length: 30 }, (_, n) => ({ x: ((n % 6) + 0.5) / 6, y: (Math.floor(n / 6) + 0.5) / 5 }));
    expect(layoutNear(BOARD, many, []).kind).toBe('in rows');
  });

  test('the same places give the same bytes', () => {
    fc.assert(
      fc.property(fc.array(place, { maxLength: 30 }), fc.array(length, { maxLength: 3 }), (places, lengths) => {
        const items = places.map((each, index) => ({ ...each, number: index + 1, title: 'T', rowAnchor: 'r', anchor: 'a' }));
        const drawn = (): string =>
          photoAround(frameSize(BOARD), items, lengths, 'parts') + photoNear(BOARD, [...items], [...lengths], 'parts').svg;
        expect(drawn()).toBe(drawn());
      }),
      { ...SEED, numRuns: 30 },
    );
  });
});
