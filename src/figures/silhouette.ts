import { px } from './markup.ts';
import { miniPort } from './mini-front.ts';
import type { DrawnPort } from './port-face.ts';

/** Front edges of a device, millimetres. */
export interface FrontEdges {
  readonly length: number;
  readonly height: number;
}

/** Pixels a millimetre at which every front of a list fits into a cell; one scale for the whole list. */
export function silhouetteScale(fronts: readonly FrontEdges[], width: number, height: number): number {
  const length = Math.max(1, ...fronts.map((front) => front.length));
  const tall = Math.max(1, ...fronts.map((front) => front.height));
  return Math.min(width / length, height / tall);
}

/** Outline of one front standing on a base line, as a register row shows it. */
export function silhouette(front: FrontEdges, scale: number, width: number, height: number): string {
  const [w, h] = [Math.max(4, front.length * scale), Math.max(4, front.height * scale)];
  return (
    `<svg class="fig sil" aria-hidden="true" width="${px(width)}" height="${px(height + 2)}" viewBox="0 0 ${px(width)} ${px(height + 2)}">` +
    `<path class="faint" d="M${px(w)} ${px(height + 0.5)}H${px(width)}"/>` +
    `<rect class="med" x="1" y="${px(height - h + 1)}" width="${px(w - 2)}" height="${px(h - 1)}" rx="${px(Math.min(4, h / 4))}"/></svg>`
  );
}

/** One device of a line-up. */
export interface LineUpDevice {
  readonly label: string;
  readonly watts: number;
  readonly front: FrontEdges;
  readonly ports: readonly DrawnPort[];
  readonly newest: boolean;
}

/** Fronts of several devices on one base line at one scale, rated power below each: the body of a figure, with its height. */
export function lineUp(devices: readonly LineUpDevice[], width: number): { body: string; height: number } {
  const gap = 12;
  const total = devices.reduce((sum, device) => sum + device.front.length, 0);
  const tall = Math.max(1, ...devices.map((device) => device.front.height));
  const scale = Math.min((width - 2 - gap * (devices.length - 1)) / Math.max(total, 1), 64 / tall, 1.6);
  const base = Math.ceil(tall * scale) + 4;
  const pitch = devices.length < 2 ? gap : Math.min(40, (width - 2 - total * scale) / (devices.length - 1));
  let x = 1;
  const shapes = devices.map((device) => {
    const shape = standing(device, x, base, scale);
    x += device.front.length * scale + pitch;
    return shape;
  });
  return { body: `${shapes.join('')}<path class="med" d="M0 ${base}.5H${px(Math.min(width, x - pitch + 1))}"/>`, height: base + 28 };
}

function standing(device: LineUpDevice, x: number, base: number, scale: number): string {
  const [w, h] = [device.front.length * scale, device.front.height * scale];
  const drawn = device.ports.filter((port) => port.connector !== 'wireless');
  const pitch = (w - 6) / Math.max(drawn.length, 1);
  const ports = drawn.map((port, index) =>
    miniPort(port, x + 3 + pitch * (index + 0.5), base - h / 2, Math.min(9 * scale, pitch - 2), 'thin'),
  );
  return (
    `<rect class="med${device.newest ? ' shade' : ''}" x="${px(x)}" y="${px(base - h)}" width="${px(w)}" height="${px(h)}" rx="${px(Math.min(4, h / 4))}"/>${ports.join('')}` +
    `<path class="thin" d="M${px(x + w / 2)} ${base}v5"/><text class="num mid" x="${px(x + w / 2)}" y="${base + 20}">${px(device.watts)}</text>`
  );
}
