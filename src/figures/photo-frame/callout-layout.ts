import { boxAround } from './box.ts';
import { crowdedLeaders } from './crowded-leaders.ts';
import type { PictureSize } from './frame-size.ts';
import { dimensionLine, placeLabels, type DrawnLength, type Lettering, type PlacedLabel } from './length-label.ts';
import { CIRCLES_APART } from './picture-edges.ts';
import { freeGate, pictureGates } from './picture-gates.ts';
import type { PlacedCallout } from './placed-callout.ts';
import type { Point } from './segment.ts';
import { spreadPoints } from './spread-points.ts';
import { straightLeaders, straightWays } from './straight-leaders.ts';

/** Two dots nearer than this would read as one. */
const DOTS_APART = 12;
/** Dots stand inside the picture, whole. */
const INSET = 7;
/** A dot with its line. */
const DOT = 12;

/** Lettering of the lengths, as large as it is printed; on a screen it is smaller. */
const LETTERING: Lettering = { size: 20, longest: 26 };

/** What stands around and over a photo. */
export interface CalloutLayout {
  readonly callouts: readonly PlacedCallout[];
  /** One of each length, in their order. */
  readonly labels: readonly (PlacedLabel | null)[];
}

/**
 * Circles outside the frame and their leaders, none crossing, none over a zone letter or over the label of a length, no circles overlapping.
 * Leaders go straight up or across wherever they can; a dot may move by up to 9 px for that, about one per cent of the width, which is less
 * than a place is good for. In a crowd some go aslant to a gate in the frame and bend there. What finds no place at all (more circles than
 * the edges hold) is left out: the numbers in the narrow drawing still show it. Labels stand beside their lines or, where leaders leave no
 * room there, at the nearest free place.
 *
 * @param places fractions of width and height
 */
export function layoutCallouts(picture: PictureSize, places: readonly Point[], lengths: readonly DrawnLength[]): CalloutLayout {
  const field = { from: { x: INSET, y: INSET }, to: { x: picture.width - INSET, y: picture.height - INSET } };
  const wanted = places.map(({ x, y }) => ({ x: x * picture.width, y: y * picture.height }));
  const dots = spreadPoints(wanted, DOTS_APART, field);
  const place = (boxes: readonly Point[], leaders: readonly PlacedCallout[]): readonly (PlacedLabel | null)[] =>
    placeLabels(
      picture,
      lengths,
      { boxes: boxes.map((dot) => boxAround(dot, DOT, DOT)), leaders: leaders.map(({ dot, gate }) => ({ from: dot, to: gate })) },
      LETTERING,
    );
  const before = place(dots, []);
  const labels = before.flatMap((label) => (label === null ? [] : [label.box]));
  const ways = straightWays(picture, dots);
  const inTheWay = { labels, lines: lengths.map((length) => dimensionLine(length, picture)) };
  const callouts =
    straightLeaders(ways, labels) ??
    crowdedLeaders({
      ...{ dots, gates: pictureGates(picture), circlesApart: CIRCLES_APART, straight: ways, inTheWay },
      gateAtLane: (side, lane) => freeGate(picture, side, lane),
    });
  return { callouts, labels: lengths.length === 0 ? [] : place(callouts.map(({ dot }) => dot), callouts) }; // prettier-ignore
}
