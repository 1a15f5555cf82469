import { PAINTS } from './paints.ts';
import { block, letter, mm, type Lettering } from './lettering.ts';
import type { Area } from './board-plan.ts';

/** Pixels of every picture. */
export const PIXELS = { width: 2400, height: 1800 } as const;

/** A drawn picture with what may be pointed at in it. */
export interface DrawnPicture {
  readonly svg: string;
  /** Where each body lies, as fractions of the picture's width and height. */
  readonly bodies: ReadonlyMap<string, Area>;
  readonly scale: { readonly from: readonly [number, number]; readonly to: readonly [number, number]; readonly millimetres: number };
}

/** What stands in a picture, in millimetres, with the size of the whole of it. */
export interface Scene {
  readonly extent: { readonly width: number; readonly height: number };
  /** Shadows are blurred apart from the rest, `low` less than `tall`. */
  readonly shadows: { readonly low: string; readonly tall: string };
  readonly ground: string;
  readonly content: string;
  readonly bodies: ReadonlyMap<string, Area>;
}

const BAR_HEIGHT = 1.6;

/** Frames a scene on the bench with a scale bar below it; the bar's length is the roundest that a third of the scene allows. */
export function framed(scene: Scene, lettering: Lettering): DrawnPicture {
  const below = 0.16;
  const k = Math.min((PIXELS.width * 0.88) / scene.extent.width, (PIXELS.height * (0.9 - below)) / scene.extent.height);
  const left = (PIXELS.width - scene.extent.width * k) / 2;
  const top = (PIXELS.height * (1 - below * 0.75) - scene.extent.height * k) / 2;
  const millimetres = [50, 40, 30, 20, 10].find((length) => length <= scene.extent.width * 0.45) ?? 10;
  const bar = { x: 0, y: Math.max(scene.extent.height + 3, (PIXELS.height * 0.925 - top) / k) };
  const at = (x: number, y: number): readonly [number, number] => [(left + x * k) / PIXELS.width, (top + y * k) / PIXELS.height];
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${PIXELS.width}" height="${PIXELS.height}" viewBox="0 0 ${PIXELS.width} ${PIXELS.height}"><defs>${PAINTS}${blur('soft', 0.5 * k)}${blur('wide', 1.5 * k)}</defs>` +
    `<rect width="100%" height="100%" fill="url(#bench)"/><g transform="translate(${mm(left)} ${mm(top)}) scale(${mm(k)})">` +
    `<g filter="url(#wide)">${scene.ground}</g>${scaleBar(bar.x, bar.y, millimetres, lettering)}` +
    `${scene.content.replace('<!--tall-->', `<g filter="url(#wide)" opacity="0.55">${scene.shadows.tall}</g>`).replace('<!--low-->', `<g filter="url(#soft)" opacity="0.6">${scene.shadows.low}</g>`)}</g></svg>`;
  const bodies = new Map([...scene.bodies].map(([reference, area]) => [reference, fractionOf(area, at, k)]));
  return {
    svg,
    bodies,
    scale: { from: at(bar.x, bar.y + BAR_HEIGHT / 2), to: at(bar.x + millimetres, bar.y + BAR_HEIGHT / 2), millimetres },
  };
}

function fractionOf(area: Area, at: (x: number, y: number) => readonly [number, number], k: number): Area {
  const [x, y] = at(area.x, area.y);
  return { x, y, width: (area.width * k) / PIXELS.width, height: (area.height * k) / PIXELS.height };
}

function blur(id: string, deviation: number): string {
  return `<filter id="${id}" filterUnits="userSpaceOnUse" x="-20" y="-20" width="300" height="250"><feGaussianBlur stdDeviation="${mm(deviation / 22)}"/></filter>`;
}

/** A printed card with a bar of known length: black over its whole length, a light core, ticks each ten millimetres. */
function scaleBar(x: number, y: number, length: number, lettering: Lettering): string {
  const ticks = Array.from({ length: length / 10 + 1 }, (_, index) =>
    block(x + index * 10 - (index === 0 ? 0 : index * 10 === length ? 0.24 : 0.12), y - 1.3, 0.24, 1.3, 'fill="#101416"'),
  );
  const cells = Array.from({ length: length / 5 }, (_, index) =>
    index % 2 === 1 ? block(x + index * 5, y + BAR_HEIGHT * 0.62, 5, BAR_HEIGHT * 0.24, 'fill="#f4f5f1"') : '',
  );
  return (
    block(x - 2, y - 2.4, length + 15, BAR_HEIGHT + 4, 'rx="0.5" fill="#000" opacity="0.12"') +
    block(x - 2.2, y - 2.6, length + 15, BAR_HEIGHT + 4, 'rx="0.4" fill="url(#card)"') +
    block(x, y, length, BAR_HEIGHT, 'fill="#101416"') +
    cells.join('') +
    ticks.join('') +
    letter(lettering, { text: `${length} mm`, x: x + length + 1.2, y: y + BAR_HEIGHT, size: 2.4, fill: '#101416', anchor: 'start' })
  );
}
