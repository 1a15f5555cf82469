import type { Side } from './picture-edges.ts';
import type { Point } from './segment.ts';

/** A place for a circle outside the picture, with the point of the edge through which its leader comes. All in px from the picture's corner. */
export interface Gate {
  readonly side: Side;
  readonly gate: Point;
  /** Middle of the circle. */
  readonly circle: Point;
}
