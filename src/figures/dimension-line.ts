import { escapeText, px } from './markup.ts';

/** Filled arrow of a dimension line, 9 long and 4.8 wide, its tip at (x, y), pointing along (dx, dy). */
function arrow(x: number, y: number, dx: number, dy: number): string {
  const [bx, by] = [x - dx * 9, y - dy * 9];
  return `M${px(x)} ${px(y)}L${px(bx - dy * 2.4)} ${px(by + dx * 2.4)}L${px(bx + dy * 2.4)} ${px(by - dx * 2.4)}Z`;
}

/** A horizontal dimension below an edge at `edgeY`: extension lines 4 px off the edge and 5 px over, value above the line. */
export function horizontalDimension(x1: number, x2: number, edgeY: number, lineY: number, text: string): string {
  const extend = (x: number): string => `M${px(x)} ${px(edgeY + 4)}V${px(lineY + 5)}`;
  return (
    `<path class="thin" d="${extend(x1)}${extend(x2)}M${px(x1)} ${px(lineY)}H${px(x2)}"/>` +
    `<path class="solid" d="${arrow(x1, lineY, -1, 0)}${arrow(x2, lineY, 1, 0)}"/>` +
    `<text class="num mid" x="${px((x1 + x2) / 2)}" y="${px(lineY - 5)}">${escapeText(text)}</text>`
  );
}

/** A vertical dimension beside an edge at `edgeX`; the line may stand on either side of it. The value reads from the right. */
export function verticalDimension(y1: number, y2: number, edgeX: number, lineX: number, text: string): string {
  const side = lineX > edgeX ? 1 : -1;
  const extend = (y: number): string => `M${px(edgeX + side * 4)} ${px(y)}H${px(lineX + side * 5)}`;
  const [tx, ty] = [lineX - 5, (y1 + y2) / 2];
  return (
    `<path class="thin" d="${extend(y1)}${extend(y2)}M${px(lineX)} ${px(y1)}V${px(y2)}"/>` +
    `<path class="solid" d="${arrow(lineX, y1, 0, -1)}${arrow(lineX, y2, 0, 1)}"/>` +
    `<text class="num mid" transform="translate(${px(tx)} ${px(ty)}) rotate(-90)">${escapeText(text)}</text>`
  );
}
