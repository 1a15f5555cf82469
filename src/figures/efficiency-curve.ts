import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { escapeText, figure, px } from './markup.ts';

/** One point: what is certain of it, as fractions; `open` where only one end is known, and on which side the true one lies. */
interface EfficiencyMark {
  readonly share: number;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  readonly open: 'above' | 'below' | null;
}

/** One measured series: efficiencies over the load, under one line voltage. */
export interface EfficiencySeries {
  /** Word at its end: "230 V". */
  readonly label: string;
  /** Wide with filled circles; else dashed with open squares. */
  readonly isFilled: boolean;
  /** Shares of full load with what is certain of each efficiency, as fractions, by rising load. */
  readonly points: readonly EfficiencyMark[];
}

/** A limit over the loads that it looks at. */
export interface EfficiencyLimit {
  readonly label: string;
  readonly value: number;
  readonly of: 'average' | 'a tenth of the load';
  /** Full load of its test, as a share of that of the axis: two thirds where 2 A stand for the 3 A of the nameplate. */
  readonly fullLoad: number;
}

/** Efficiency of one port at one voltage. */
export interface EfficiencyCurve {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly series: readonly EfficiencySeries[];
  readonly limits: readonly EfficiencyLimit[];
}

const [WIDTH, HEIGHT, LEFT, RIGHT, TOP, BOTTOM] = [400, 250, 40, 322, 26, 206] as const;
const LOADS = [10, 25, 50, 75, 100] as const;
/** Least distance of two words at the right, in pixels. */
const APART = 17;

/**
 * Efficiency over load: one line voltage wide with filled circles, others dashed with open squares, whiskers over what is certain, the limit
 * of the mean as a wide dash-dot line over the loads it averages, that of a tenth of the load as a short one. Words stand at the ends of lines.
 */
export function efficiencyCurve({ id, title, description, series, limits }: EfficiencyCurve): string {
  const [low, high] = ends(series, limits);
  const x = scaleLinear([0, 105], [LEFT, RIGHT]);
  const y = scaleLinear([low, high], [BOTTOM, TOP]);
  const ticks = y.ticks(5);
  const axes =
    `<path class="grid-line" d="${ticks.map((value) => `M${LEFT} ${px(y(value))}H${RIGHT}`).join('')}"/>` +
    `<path class="med" d="M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}"/>` +
    `<path class="thin" d="${ticks.map((value) => `M${LEFT} ${px(y(value))}h-5`).join('')}${LOADS.map((load) => `M${px(x(load))} ${BOTTOM}v5`).join('')}"/>` +
    ticks.map((value) => `<text class="num end" x="${LEFT - 8}" y="${px(y(value) + 5)}">${String(value)}</text>`).join('') +
    LOADS.map((load) => `<text class="num mid" x="${px(x(load))}" y="${BOTTOM + 20}">${String(load)}</text>`).join('') +
    `<text x="0" y="12">efficiency, %</text><text class="end" x="${RIGHT}" y="${BOTTOM + 38}">load, %</text>`;
  const place: Place = { x, y };
  const words = apart([
    ...series.flatMap(({ label, points }) => {
      const last = points.at(-1);
      return last === undefined ? [] : [{ y: y(last.nominal * 100), text: label, isLimit: false }];
    }),
    ...limits.filter(({ of }) => of === 'average').map(({ label, value }) => ({ y: y(value * 100), text: label, isLimit: true })),
  ]);
  const body =
    axes + limits.map((limit) => limitLine(limit, place)).join('') + series.map((each) => seriesMarkup(each, place)).join('') + words;
  return figure({ id, className: 'fig efficiency', width: WIDTH, height: HEIGHT, title, description, body });
}

interface Place {
  readonly x: (percent: number) => number;
  readonly y: (percent: number) => number;
}

/** Whole fives around everything that is drawn. */
function ends(series: readonly EfficiencySeries[], limits: readonly EfficiencyLimit[]): readonly [number, number] {
  const values = [
    ...series.flatMap(({ points }) => points.flatMap((point) => [point.low, point.high])),
    ...limits.map(({ value }) => value),
  ];
  const low = Math.floor((Math.min(...values) * 100 - 1) / 5) * 5;
  const high = Math.ceil((Math.max(...values) * 100 + 1) / 5) * 5;
  return [Math.max(0, low), Math.min(100, Math.max(high, low + 10))];
}

function limitLine({ of, value, fullLoad }: EfficiencyLimit, { x, y }: Place): string {
  const [from, to] = of === 'average' ? [25 * fullLoad, 100 * fullLoad] : [6, 14];
  return `<path class="limit-line" d="M${px(x(from))} ${px(y(value * 100))}H${px(x(to))}"/>`;
}

function seriesMarkup({ points, isFilled }: EfficiencySeries, { x, y }: Place): string {
  const at = points.map(({ share, nominal }) => [x(share * 100), y(nominal * 100)] as const);
  const path = line()(at.map(([across, down]) => [Number(across.toFixed(2)), Number(down.toFixed(2))])) ?? '';
  const whiskers = points
    .filter(({ low, high }) => (high - low) * 100 > 0.1)
    .map(({ share, low, high }) => {
      const [across, top, bottom] = [x(share * 100), y(high * 100), y(low * 100)];
      return `M${px(across)} ${px(top)}V${px(bottom)}M${px(across - 4)} ${px(top)}h8M${px(across - 4)} ${px(bottom)}h8`;
    });
  const arrows = points.flatMap(({ share, nominal, open }) => {
    if (open === null) return [];
    const turn = open === 'above' ? -1 : 1;
    const tip = y(nominal * 100) + turn * 20;
    return [`M${px(x(share * 100))} ${px(tip - turn * 14)}V${px(tip)}m-3.5 ${px(turn * -6)}l3.5 ${px(turn * 6)}l3.5 ${px(turn * -6)}`];
  });
  const marks = at.map(([across, down]) =>
    isFilled
      ? `<circle class="point-in" cx="${px(across)}" cy="${px(down)}" r="4"/>`
      : `<rect class="point-open" x="${px(across - 3.75)}" y="${px(down - 3.75)}" width="7.5" height="7.5"/>`,
  );
  const drawn = [...whiskers, ...arrows].join('');
  const spread = drawn === '' ? '' : `<path class="thin" d="${drawn}"/>`;
  return `<path class="${isFilled ? 'wide' : 'wide long-dash'} no-fill" d="${path}"/>${spread}${marks.join('')}`;
}

/** Words at the right end, pushed apart from the top down so that none covers another. */
function apart(words: readonly { readonly y: number; readonly text: string; readonly isLimit: boolean }[]): string {
  let last = Number.NEGATIVE_INFINITY;
  return [...words]
    .sort((one, other) => one.y - other.y)
    .map(({ y, text, isLimit }) => {
      const placed = Math.max(y + 5, last + APART);
      last = placed;
      return `<text class="${isLimit ? 'small-word' : 'num'}" x="${RIGHT + 6}" y="${px(placed)}">${escapeText(text)}</text>`;
    })
    .join('');
}
