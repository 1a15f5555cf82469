import { px } from './markup.ts';
import type { DrawnPort } from './port-face.ts';

/** Small front view with the used ports filled: 78 × 36 px. The row's words say the same, so it is hidden from readers of text. */
export function miniFront(ports: readonly DrawnPort[], used: readonly string[]): string {
  const [width, height] = [78, 36];
  const pitch = (width - 12) / Math.max(ports.length, 1);
  const shapes = ports.map((port, index) => {
    const x = 6 + pitch * (index + 0.5);
    const fill = used.includes(port.id) ? 'on' : 'off';
    return miniPort(port, x, height / 2, Math.min(14, pitch - 3), fill);
  });
  return `<svg class="fig mini" aria-hidden="true" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><rect class="med" x="1" y="1" width="${width - 2}" height="${height - 2}" rx="5"/>${shapes.join('')}</svg>`;
}

/** A port in a view too small for detail: a pill for USB-C, a box for USB-A, a circle for the rest. */
export function miniPort(port: DrawnPort, x: number, y: number, width: number, className: string): string {
  if (port.connector === 'USB-C') {
    const h = Math.min(5.5, width * 0.45);
    return `<rect class="${className}" x="${px(x - width / 2)}" y="${px(y - h / 2)}" width="${px(width)}" height="${px(h)}" rx="${px(h / 2)}"/>`;
  }
  if (port.connector === 'USB-A') {
    const h = Math.min(8, width * 0.6);
    return `<rect class="${className}" x="${px(x - width / 2)}" y="${px(y - h / 2)}" width="${px(width)}" height="${px(h)}"/>`;
  }
  return `<circle class="${className}" cx="${px(x)}" cy="${px(y)}" r="${px(Math.min(3.6, width / 2))}"/>`;
}
