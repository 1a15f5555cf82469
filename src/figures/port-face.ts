import type { Connector } from '../entry/entry.ts';
import { escapeText, px } from './markup.ts';

/** A port as a drawing needs it. */
export interface DrawnPort {
  readonly id: string;
  readonly connector: Connector;
}

/**
 * Outer size of each connector's opening in millimetres, width then height. USB-C 8.94 × 3.26 and USB-A 12.5 × 5.12 are the
 * receptacle openings of the USB connector specifications (from memory; they shape a drawing and decide nothing).
 */
const OPENINGS: Readonly<Record<Connector, readonly [number, number]>> = {
  'USB-C': [8.94, 3.26],
  'USB-A': [12.5, 5.12],
  barrel: [5.5, 5.5],
  'captive cable': [4.5, 4.5],
  wireless: [0, 0],
};

/** One connector drawn face on, centred at (x, y); `scale` in pixels a millimetre. */
export function connectorFace(connector: Connector, x: number, y: number, scale: number): string {
  const [w, h] = [OPENINGS[connector][0] * scale, OPENINGS[connector][1] * scale];
  if (connector === 'USB-C') {
    const tongue = w * 0.3;
    return `<rect class="med" x="${px(x - w / 2)}" y="${px(y - h / 2)}" width="${px(w)}" height="${px(h)}" rx="${px(h / 2)}"/><path class="thin" d="M${px(x - tongue)} ${px(y)}h${px(2 * tongue)}"/>`;
  }
  if (connector === 'USB-A') {
    return (
      `<rect class="med" x="${px(x - w / 2)}" y="${px(y - h / 2)}" width="${px(w)}" height="${px(h)}"/>` +
      `<rect class="solid" x="${px(x - w / 2 + 2.5)}" y="${px(y - h / 2 + 2.5)}" width="${px(w - 5)}" height="${px(h * 0.32)}"/>`
    );
  }
  const centre = `cx="${px(x)}" cy="${px(y)}"`;
  if (connector === 'barrel')
    return `<circle class="med" ${centre} r="${px(w / 2)}"/><circle class="solid" ${centre} r="${px(w * 0.18)}"/>`;
  return `<circle class="med" ${centre} r="${px(w / 2)}"/><circle class="solid" ${centre} r="${px(w * 0.3)}"/>`;
}

/**
 * All ports of a face, evenly spaced on its centre line, in two rows where one does not hold them, each named above.
 * Positions are a convention of the drawing: an entry does not say where on the face a port stands.
 */
export function portFace(ports: readonly DrawnPort[], box: { x: number; y: number; width: number; height: number }, scale: number): string {
  const drawn = ports.filter((port) => port.connector !== 'wireless');
  const needed = drawn.reduce((sum, port) => sum + OPENINGS[port.connector][0] * scale + 10, 10);
  const rows = needed > box.width && drawn.length > 2 ? 2 : 1;
  const perRow = Math.ceil(drawn.length / rows);
  const shrink = Math.min(1, (box.width * rows) / Math.max(needed, 1), box.height / (rows * 8 * scale));
  return drawn
    .map((port, index) => {
      const row = Math.floor(index / perRow);
      const inRow = Math.min(perRow, drawn.length - row * perRow);
      const x = box.x + (box.width * ((index % perRow) + 0.5 + 0.35 * spread(inRow, index % perRow))) / inRow;
      const y = box.y + (box.height * (row + 0.5)) / rows;
      const above = (OPENINGS[port.connector][1] * scale * shrink) / 2 + 10;
      const name =
        box.height / rows > 44 ? `<text class="num strong mid" x="${px(x)}" y="${px(y - above)}">${escapeText(port.id)}</text>` : '';
      return connectorFace(port.connector, x, y, scale * shrink) + name;
    })
    .join('');
}

/** Draws the outer ports in a little from the even spacing, as on a real face: half a pitch at most. */
function spread(count: number, index: number): number {
  if (count < 3) return 0;
  return ((count - 1) / 2 - index) / (count - 1);
}
