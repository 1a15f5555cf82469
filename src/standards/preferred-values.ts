import type { Source } from '../values/value.ts';

/** Names of the series of IEC 60063, by the count of values in a decade. */
export type SeriesName = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

/** A series of preferred values: integers of one decade, two digits up to E24 and three from E48. */
export interface PreferredSeries {
  readonly name: SeriesName;
  readonly values: readonly number[];
  /** Tolerance in percent that the series was made for. */
  readonly tolerance: number;
  readonly source: Source;
}

const LISTS: Source = {
  title: 'IEC 60063, preferred number series for resistors and capacitors',
  section: 'series lists, as reproduced on component value pages',
  standing: 'secondary',
  url: 'https://www.qsl.net/g4usp/Components/Component%20preferred%20values.htm',
};

/** E192 is the rounded geometric series but for one value: 920, not 919. */
const E192_EXCEPTION: Source = {
  title: 'IEC 60063, E192',
  section: 'the value 920 between 909 and 931, from memory and from E192 lists in several independent public code bases',
  standing: 'secondary',
};

const E192_INDEX_OF_920 = 185;
const E12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];
/** Eight values (27, 30, 33, 36, 39, 43, 47, 82) are older than the rule and differ from the rounded geometric series. */
const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/** All series, the coarsest first. */
export const PREFERRED_SERIES: readonly PreferredSeries[] = [
  {
    name: 'E3',
    values: [10, 22, 47],
    tolerance: 40,
    source: { ...LISTS, section: `${LISTS.section}; the 40 % from memory`, standing: 'memory' },
  },
  { name: 'E6', values: [10, 15, 22, 33, 47, 68], tolerance: 20, source: LISTS },
  { name: 'E12', values: E12, tolerance: 10, source: LISTS },
  { name: 'E24', values: E24, tolerance: 5, source: LISTS },
  { name: 'E48', values: geometric(48), tolerance: 2, source: LISTS },
  { name: 'E96', values: geometric(96), tolerance: 1, source: LISTS },
  { name: 'E192', values: e192(), tolerance: 0.5, source: E192_EXCEPTION },
];

/** The coarsest series that holds a value of any decade; null where none does. Compared as integers of three digits. */
export function seriesOf(value: number): SeriesName | null {
  const digits = threeDigits(value);
  if (digits === null) return null;
  return PREFERRED_SERIES.find((series) => series.values.some((listed) => scaled(listed) === digits))?.name ?? null;
}

/** The values of a series just below and just above (or equal to) a positive value, in its own decade. */
export function neighbours(value: number, name: SeriesName): { readonly below: number; readonly above: number } | null {
  const series = PREFERRED_SERIES.find((candidate) => candidate.name === name);
  if (series === undefined || !(value > 0) || !Number.isFinite(value)) return null;
  const decade = Math.floor(Math.log10(value));
  const listed = [decade - 1, decade, decade + 1].flatMap((power) => series.values.map((digits) => inDecade(scaled(digits), power)));
  const slack = value * 1e-9;
  const below = listed.filter((candidate) => candidate <= value + slack).at(-1);
  const above = listed.find((candidate) => candidate >= value - slack);
  return below === undefined || above === undefined ? null : { below, above };
}

/** 4.7e-6 is 470; null for a value that three digits do not hold. */
function threeDigits(value: number): number | null {
  if (!(value > 0) || !Number.isFinite(value)) return null;
  const mantissa = value / 10 ** Math.floor(Math.log10(value));
  const digits = Math.round(mantissa * 100);
  if (Math.abs(mantissa * 100 - digits) > 1e-6) return null;
  return digits === 1000 ? 100 : digits;
}

function scaled(listed: number): number {
  return listed < 100 ? listed * 10 : listed;
}

function inDecade(threeDigit: number, power: number): number {
  return Number(`${threeDigit}e${power - 2}`);
}

function geometric(count: number): number[] {
  return Array.from({ length: count }, (_, index) => Math.round(100 * 10 ** (index / count)));
}

function e192(): number[] {
  return geometric(192).map((value, index) => (index === E192_INDEX_OF_920 ? 920 : value));
}
