import { escapeText, figure, px } from './markup.ts';
import { kindMark } from './kind-mark.ts';
import { logTicks } from './log-ticks.ts';

/** One device on the scatter. */
export interface ScatterPoint {
  readonly name: string;
  readonly kind: string;
  readonly volume: number;
  readonly watts: number;
  readonly isFound: boolean;
}

/** What the scatter shows besides its points: the ranges that are set, open ends as null. */
export interface ScatterRange {
  readonly volume: { readonly low: number | null; readonly high: number | null } | null;
  readonly watts: { readonly low: number | null; readonly high: number | null } | null;
}

/** How a scatter is named in its page. */
export interface ScatterWords {
  readonly id: string;
  readonly className?: string;
  readonly description: string;
}

const DENSITIES = [0.05, 0.1, 0.25, 0.5, 1, 2, 4] as const;

/** Log–log scatter of rated power over volume with lines of equal power density; filled marks are found, open ones are not. */
export function finderScatter(
  points: readonly ScatterPoint[],
  range: ScatterRange,
  [width, height]: readonly [number, number],
  { id, className = '', description }: ScatterWords,
): string {
  const place = placeOf(points, width, height);
  const found = points.filter((point) => point.isFound);
  const body =
    grid(place) +
    field(range, place) +
    equalLines(points, place) +
    marks(points, false, place) +
    marks(points, true, place) +
    names(found, place);
  return figure({
    id,
    className: `fig scatter${className === '' ? '' : ` ${className}`}`,
    width,
    height,
    title: 'Rated power over volume, both axes logarithmic',
    description,
    body,
  });
}

interface Place {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly volumes: readonly [number, number];
  readonly powers: readonly [number, number];
  readonly x: (volume: number) => number;
  readonly y: (watts: number) => number;
}

function placeOf(points: readonly ScatterPoint[], width: number, height: number): Place {
  const volumes = ends(points.map((point) => point.volume));
  const powers = ends(points.map((point) => point.watts));
  const [left, right, top, bottom] = [46, width - 62, 26, height - 46];
  const along = (value: number, [low, high]: readonly [number, number]): number => Math.log(value / low) / Math.log(high / low);
  return {
    left,
    right,
    top,
    bottom,
    volumes,
    powers,
    x: (volume) => left + along(volume, volumes) * (right - left),
    y: (watts) => bottom - along(watts, powers) * (bottom - top),
  };
}

/** Room on both sides, so that no mark stands on an axis. */
function ends(values: readonly number[]): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, 0];
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return high === 0 ? [10, 100] : [low / 1.25, high * 1.25];
}

function grid({ left, right, top, bottom, volumes, powers, x, y }: Place): string {
  const across = logTicks(...volumes);
  const up = logTicks(...powers);
  return (
    `<path class="grid-line" d="${up.map((watts) => `M${px(left)} ${px(y(watts))}H${px(right)}`).join('')}"/>` +
    `<path class="med" d="M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}"/>` +
    `<path class="thin" d="${across.map((volume) => `M${px(x(volume))} ${px(bottom)}v5`).join('')}${up.map((watts) => `M${px(left)} ${px(y(watts))}h-5`).join('')}"/>` +
    across.map((volume) => `<text class="num mid" x="${px(x(volume))}" y="${px(bottom + 21)}">${String(volume)}</text>`).join('') +
    up.map((watts) => `<text class="num end" x="${px(left - 9)}" y="${px(y(watts) + 5)}">${String(watts)}</text>`).join('') +
    `<text x="2" y="12">rated, W</text><text class="end" x="${px(right + 60)}" y="12">W/cm³</text><text class="end" x="${px(right)}" y="${px(bottom + 40)}">volume, cm³</text>`
  );
}

function field({ volume, watts }: ScatterRange, { left, right, top, bottom, x, y }: Place): string {
  if (volume === null && watts === null) return '';
  const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
  const x1 = within(volume?.low ? x(volume.low) : left, left, right);
  const x2 = within(volume?.high ? x(volume.high) : right, left, right);
  const y1 = within(watts?.high ? y(watts.high) : top, top, bottom);
  const y2 = within(watts?.low ? y(watts.low) : bottom, top, bottom);
  return `<path class="chosen" d="M${px(x1)} ${px(y1)}H${px(x2)}V${px(y2)}H${px(x1)}Z"/>`;
}

function equalLines(points: readonly ScatterPoint[], { left, right, top, bottom, volumes, powers, x, y }: Place): string {
  let lastLabel = Number.POSITIVE_INFINITY;
  const [least, most] = ends(points.map((point) => point.watts / point.volume));
  return DENSITIES.filter((density) => density >= least && density <= most)
    .reverse()
    .flatMap((density) => {
      const from = Math.max(volumes[0], powers[0] / density);
      const to = Math.min(volumes[1], powers[1] / density);
      if (to <= from * 1.3) return [];
      const [endX, endY] = [x(to), y(to * density)];
      const isTop = endY <= top + 0.5;
      const label = isTop ? { x: endX + 4, y: top - 6 } : { x: right + 6, y: Math.min(bottom, endY + 5) };
      const hasRoom = isTop ? endX < right - 20 && endX > left + 40 && Math.abs(endX - lastLabel) > 46 : true;
      if (isTop && hasRoom) lastLabel = endX;
      const line = `<path class="centre" d="M${px(x(from))} ${px(y(from * density))}L${px(endX)} ${px(endY)}"/>`;
      return [hasRoom ? `${line}<text class="num" x="${px(label.x)}" y="${px(label.y)}">${String(density)}</text>` : line];
    })
    .join('');
}

/** One path for each kind: a thousand marks are drawn as fast as ten. */
function marks(points: readonly ScatterPoint[], isFound: boolean, { x, y }: Place): string {
  const shown = points.filter((point) => point.isFound === isFound);
  const kinds = [...new Set(shown.map((point) => point.kind))];
  return kinds
    .map((kind) => {
      const path = shown.filter((point) => point.kind === kind).map((point) => kindMark(kind, x(point.volume), y(point.watts)));
      return `<path class="${isFound ? 'point-in' : 'point-out'}" d="${path.join('')}"/>`;
    })
    .join('');
}

/** Three names at most: the strongest found, the densest, the smallest. */
function names(found: readonly ScatterPoint[], { x, y, right, left, top }: Place): string {
  const most = (of: (point: ScatterPoint) => number): ScatterPoint | undefined =>
    found.reduce<ScatterPoint | undefined>((best, point) => (best === undefined || of(point) > of(best) ? point : best), undefined);
  const chosen = [most((point) => point.watts), most((point) => point.watts / point.volume), most((point) => -point.volume)];
  const boxes: { readonly x: number; readonly y: number; readonly width: number }[] = [];
  return [...new Set(chosen)]
    .flatMap((point) => {
      if (point === undefined) return [];
      const [px0, py0] = [x(point.volume), y(point.watts)];
      const width = point.name.length * 7.6 + 8;
      for (const [dx, dy] of [
        [14, -22],
        [14, 26],
        [-14 - width, -22],
        [-14 - width, 26],
      ] as const) {
        const box = { x: px0 + dx, y: Math.max(top + 14, py0 + dy), width };
        if (box.x < left + 4 || box.x + width > right) continue;
        if (boxes.some((other) => Math.abs(other.y - box.y) < 20 && box.x < other.x + other.width && other.x < box.x + box.width)) continue;
        boxes.push(box);
        const towards = dx > 0 ? box.x - 1 : box.x + width + 1;
        return [
          `<path class="thin" d="M${px(px0)} ${px(py0)}L${px(towards)} ${px(box.y - 5)}"/><rect class="clear" x="${px(box.x)}" y="${px(box.y - 15)}" width="${px(width)}" height="20"/><text class="num" x="${px(box.x + 4)}" y="${px(box.y)}">${escapeText(point.name)}</text>`,
        ];
      }
      return [];
    })
    .join('');
}
