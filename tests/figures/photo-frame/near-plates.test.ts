import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxAround, boxesAreNear, crossesBox, holds } from '../../../src/figures/photo-frame/box.ts';
import { layoutNear, nearLeader, type NearLayout } from '../../../src/figures/photo-frame/near-layout.ts';
import { photoNear } from '../../../src/figures/photo-frame/photo-near.ts';
import { segmentsMeet, type Point } from '../../../src/figures/photo-frame/segment.ts';

// Without the leaning to 0 and 1: dozens of parts at one and the same corner are a case of their own, below.
const SEED = { seed: 20_261_125, numRuns: 12, noBias: true };
const BOARD = { width: 1600, height: 1000 };
const UPRIGHT = { width: 3000, height: 4000 };
const thousandths = (min: number, max: number): fc.Arbitrary<Point> => {
  const share = fc.integer({ min, max }).map((n) => n / 1000);
  return fc.record({ x: share, y: share });
};
const place = thousandths(0, 1000);
const crowd = thousandths(400, 600);

/** Parts spread over a board as evenly as parts are (steps of the golden section). */
function spread(count: number): readonly Point[] {
  return Array.from({ length: count }, (_, n) => ({ x: 0.05 + 0.9 * ((n * 0.6180339887) % 1), y: 0.06 + 0.88 * ((n * 0.7548776662) % 1) }));
}

function plateFaults({ marks, mark, size, kind }: NearLayout): readonly string[] {
  const picture = { left: 0, top: 0, right: size.width, bottom: size.height };
  const plates = marks.map(({ circle }) => boxAround(circle, mark.width, mark.height));
  const leaders = marks.map(nearLeader);
  return [
    ...(kind === 'on plates' ? [] : [kind]),
    ...plates.flatMap((plate, at) => [
      ...(holds(picture, plate) ? [] : [`${at} outside`]),
      ...plates.slice(at + 1).flatMap((other) => (boxesAreNear(plate, other, -0.05) ? [`${at} over another`] : [])),
    ]),
    ...leaders.flatMap((one, at) =>
      leaders.slice(at + 1).flatMap((other) => (one !== null && other !== null && segmentsMeet(one, other) ? [`${at} meets another`] : [])),
    ),
  ];
}

/** Leaders that go under the plate of another, and plates that hide the dot of another. */
function hidden({ marks, mark }: NearLayout): number {
  return marks.reduce((sum, one, at) => {
    const plate = boxAround(one.circle, mark.width, mark.height);
    const hides = marks.filter((other, place) => {
      const leader = nearLeader(other);
      return place !== at && ((leader !== null && crossesBox(leader, plate)) || boxesAreNear(plate, boxAround(other.dot, 4, 4), 0));
    });
    return sum + hides.length;
  }, 0);
}

describe('more callouts than the rows of a phone hold', () => {
  test.each([
    ['anywhere', place],
    ['in a crowd', crowd],
  ])('31 to 60 %s: no plate over another or out of the picture, no leaders that meet, none lost', (_, where) => {
    fc.assert(
      fc.property(fc.array(where, { minLength: 31, maxLength: 60 }), fc.constantFrom(BOARD, UPRIGHT), (places, picture) => {
        const layout = layoutNear(picture, places, []);
        expect(layout.marks).toHaveLength(places.length);
        expect(plateFaults(layout)).toEqual([]);
      }),
      SEED,
    );
  });

  test.each([31, 40, 50])('%i parts spread over a board: no plate hides the dot or the leader of another', (count) => {
    for (const picture of [BOARD, UPRIGHT]) {
      const layout = layoutNear(picture, spread(count), []);
      expect(plateFaults(layout)).toEqual([]);
      expect(hidden(layout)).toBe(0);
    }
  });

  test('forty at one place and forty in a corner: still no plate over another', () => {
    for (const at of [0, 0.5]) {
      const layout = layoutNear(
        BOARD,
        Array.from({ length: 40 }, () => ({ x: at, y: at })),
        [],
      );
      expect(plateFaults(layout).filter((fault) => !fault.includes('meets'))).toEqual([]);
    }
  });

  test('a lonely part carries its number itself', () => {
    const crowded = Array.from({ length: 39 }, (_, n) => ({ x: 0.4 + 0.03 * (n % 7), y: 0.4 + 0.04 * Math.floor(n / 7) }));
    const { marks } = layoutNear(BOARD, [...crowded, { x: 0.9, y: 0.1 }], []);
    const [lonely] = marks.slice(-1);
    expect(lonely?.circle).toEqual(lonely?.dot);
  });

  test('the label of a length keeps off plates, and a number of three figures has a wider plate', () => {
    const gap = { name: 'slot', value: '2.4 mm', isScale: false, from: [0.48, 0.4], to: [0.52, 0.4] } as const;
    const { labels, marks, mark } = layoutNear(UPRIGHT, spread(40), [gap], 3);
    expect(mark.width).toBeGreaterThan(layoutNear(UPRIGHT, spread(40), []).mark.width);
    const [label] = labels;
    if (label === null || label === undefined) throw new Error('no room for the label');
    expect(marks.filter(({ circle }) => boxesAreNear(label.box, boxAround(circle, mark.width, mark.height), 0))).toEqual([]);
  });

  test('each plate is a link to its row', () => {
    const items = spread(40).map((each, n) => ({ ...each, number: n + 1, title: 'T', rowAnchor: `part-${n + 1}`, anchor: 'a' }));
    const { svg, kind } = photoNear(BOARD, items, [], 'parts');
    expect(kind).toBe('on plates');
    expect(svg.match(/<a class="ph-item" href="#part-\d+"[^>]*><rect class="ph-plate"/g)).toHaveLength(40);
  });
});
