import { px } from '../markup.ts';

/** Turns a place along the power's way and across it into a point of the drawing. */
export type Placing = (along: number, across: number) => readonly [x: number, y: number];

/** One piece of the band: centre and width at both ends, in pixels. */
export interface BandPiece {
  readonly from: number;
  readonly to: number;
  readonly centreFrom: number;
  readonly centreTo: number;
  readonly widthFrom: number;
  readonly widthTo: number;
  /** 45° hatching on the side of the mains, 135° behind the barrier. */
  readonly side: 'primary' | 'secondary';
  /** Dashed edges: the power here is not known. */
  readonly isGuessed: boolean;
  /** Ends in an arrow. */
  readonly isArrow: boolean;
}

/** The piece as hatched area and its two edges; straight where its ends face each other, else an S. */
export function bandPiece(piece: BandPiece, at: Placing): string {
  const one = edge(piece, -1, at);
  const other = edge(piece, 1, at);
  const tip = piece.isArrow ? `L${point(at(piece.to + arrowLength(piece.widthTo), piece.centreTo))}` : '';
  const back = edge({ ...piece, from: piece.to, to: piece.from, ...swapped(piece) }, 1, at);
  const area = `M${one.start}${one.rest}${tip}L${back.start}${back.rest}Z`;
  const lines = piece.isArrow
    ? `M${one.start}${one.rest}${tip}L${back.start}${back.rest}`
    : `M${one.start}${one.rest}M${other.start}${other.rest}`;
  return `<path class="hatch-${piece.side}" d="${area}"/><path class="${piece.isGuessed ? 'unknown-edge' : 'wide'}" d="${lines}"/>`;
}

/** Length of the arrow on a band of that width. */
function arrowLength(width: number): number {
  return Math.min(14, Math.max(7, width / 3));
}

function swapped(piece: BandPiece): Partial<BandPiece> {
  return { centreFrom: piece.centreTo, centreTo: piece.centreFrom, widthFrom: piece.widthTo, widthTo: piece.widthFrom };
}

function edge(piece: BandPiece, side: 1 | -1, at: Placing): { readonly start: string; readonly rest: string } {
  const a = piece.centreFrom + (side * piece.widthFrom) / 2;
  const b = piece.centreTo + (side * piece.widthTo) / 2;
  const start = point(at(piece.from, a));
  const end = point(at(piece.to, b));
  if (Math.abs(piece.centreFrom - piece.centreTo) < 0.5) return { start, rest: `L${end}` };
  const middle = (piece.from + piece.to) / 2;
  return { start, rest: `C${point(at(middle, a))} ${point(at(middle, b))} ${end}` };
}

function point([x, y]: readonly [number, number]): string {
  return `${px(x)} ${px(y)}`;
}
