import type { PictureSize } from './frame-size.ts';
import type { Gate } from './gate.ts';
import { circleAt, CIRCLES_APART, edgeLength, gateAt, isClearOfLetters, SIDES, type Side } from './picture-edges.ts';

/** Gates along all edges as dense as circles allow, none at a zone letter. */
export function pictureGates(picture: PictureSize): readonly Gate[] {
  return SIDES.flatMap((side) => {
    const lanes: number[] = [];
    for (let lane = 4; lane <= edgeLength(side, picture) - 4; lane += 1) {
      const last = lanes.at(-1);
      if ((last === undefined || lane - last >= CIRCLES_APART) && isClearOfLetters(side, lane, picture)) lanes.push(lane);
    }
    return lanes.map((lane) => gateAtLane(picture, side, lane));
  });
}

/** The gate at a place along an edge; null at a zone letter and beyond the edge's ends. */
export function freeGate(picture: PictureSize, side: Side, lane: number): Gate | null {
  const isOnEdge = lane >= 0 && lane <= edgeLength(side, picture);
  return isOnEdge && isClearOfLetters(side, lane, picture) ? gateAtLane(picture, side, lane) : null;
}

function gateAtLane(picture: PictureSize, side: Side, lane: number): Gate {
  return { side, gate: gateAt(side, lane, picture), circle: circleAt(side, lane, picture) };
}
