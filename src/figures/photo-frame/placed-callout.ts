import type { Side } from './picture-edges.ts';
import type { Point } from './segment.ts';

/** One circle outside the picture with its leader. All in px from the picture's corner. */
export interface PlacedCallout {
  /** Index of the callout in what was given. */
  readonly index: number;
  readonly side: Side;
  /** The point on the part. */
  readonly dot: Point;
  /** Where the leader goes through the picture's edge; straight across or up from the dot, but for a crowd. */
  readonly gate: Point;
  /** Middle of the circle. */
  readonly circle: Point;
}
