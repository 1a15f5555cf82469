import { px } from './markup.ts';

/** Outline of the mark of a device kind about a centre: ○ wall, □ desktop, △ car, ◇ power bank, ▽ open frame, hexagon wireless. */
export function kindMark(kind: string, x: number, y: number): string {
  const at = (dx: number, dy: number): string => `${px(x + dx)} ${px(y + dy)}`;
  switch (kind) {
    case 'desktop charger':
      return `M${at(-4.5, -4.5)}h9v9h-9Z`;
    case 'car charger':
      return `M${at(0, -5.5)}L${at(5.5, 4.5)}H${px(x - 5.5)}Z`;
    case 'power bank':
      return `M${at(0, -6)}L${at(6, 0)}L${at(0, 6)}L${at(-6, 0)}Z`;
    case 'open frame supply':
      return `M${at(0, 5.5)}L${at(5.5, -4.5)}H${px(x - 5.5)}Z`;
    case 'wireless charger':
      return `M${at(-2.7, -5)}h5.4L${at(5.5, 0)}L${at(2.7, 5)}h-5.4L${at(-5.5, 0)}Z`;
    default:
      return `M${at(-4.8, 0)}a4.8 4.8 0 1 0 9.6 0a4.8 4.8 0 1 0 -9.6 0Z`;
  }
}
