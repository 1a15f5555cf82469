import { scaleOf } from '../units/display-units.ts';
import { secondsOfDay, secondsOfDayTime, splitInstant, type ClockParts, type DayOrder } from './clock-time.ts';
import { unitSpelt } from './head-unit.ts';
import { numberInCell, type DecimalSign } from './number-cell.ts';
import { DAY } from './clock-time.ts';

/** How the author or the head says that the time is written; each part null where nothing is said. */
export interface TimeWriting {
  /** Seconds in one unit of the column: 0.001 for milliseconds. */
  readonly scale: number | null;
  readonly parts: ClockParts | null;
  readonly order: DayOrder | null;
}

/** Reads the time of one row in seconds from a start that is the same for the whole file; `NaN` where it cannot be read. */
type TimeReader = (time: string, date: string | null) => number;

/** How the times of a file are written, told by its first row. */
export interface TimeBase {
  readonly read: TimeReader;
  /** Date and time, a time of day or elapsed clock, or a plain number. */
  readonly kind: 'instant' | 'clock' | 'number';
  /** What had to be taken for granted, in words; null where everything was said. */
  readonly assumed: string | null;
}

const ORDERS: Readonly<Record<string, DayOrder>> = {
  'd/m/y': 'day first',
  'd.m.y': 'day first',
  'm/d/y': 'month first',
  'y-m-d': 'year first',
};
const NOTHING: TimeWriting = { scale: null, parts: null, order: null };

/** "s", "ms", "min", "h:m:s", "m:s", "h:m", "d/m/y", "m/d/y"; null where the words are none of these. */
export function timeWriting(words: string): TimeWriting | null {
  const unit = unitSpelt(words, 'time');
  if (unit !== null) return { ...NOTHING, scale: scaleOf(unit) };
  if (words === 'h:m:s') return NOTHING;
  if (words === 'm:s' || words === 'h:m') return { ...NOTHING, parts: words };
  const order = ORDERS[words];
  return order === undefined ? null : { ...NOTHING, order };
}

/** Why the times of a file cannot be read: by its writing as a whole, or because this one cell is no time. */
export interface TimeRefusal {
  readonly refused: string;
  readonly isUnclear: boolean;
}

/** Tells from the first row how times are written. */
export function timeBase(first: string, firstDate: string | null, said: TimeWriting, decimal: DecimalSign): TimeBase | TimeRefusal {
  const number = numberInCell(first, decimal);
  if (!Number.isNaN(number) && firstDate === null) return numberBase(number, said, decimal);
  const { date, clock } = splitInstant(firstDate === null ? first : `${firstDate.trim()} ${first.trim()}`);
  const day = date === null ? 0 : secondsOfDay(date, said.order);
  if (day === 'ambiguous')
    return unclear(`"${date ?? ''}" can be read with the day or the month first: write "in d/m/y" or "in m/d/y" behind the head`);
  if (day === null) return noTime(first);
  if (said.parts === null && /^\d+:\d+$/.test(clock) && date === null)
    return unclear(`"${first}" can be read as minutes and seconds or as hours and minutes: write "in m:s" or "in h:m" behind the head`);
  const parts = said.parts ?? (date === null ? null : 'h:m');
  if (Number.isNaN(secondsOfDayTime(clock, parts))) return noTime(first);
  return date === null ? { read: clockReader(parts), kind: 'clock', assumed: null } : instantBase(parts, said.order);
}

function unclear(refused: string): TimeRefusal {
  return { refused, isUnclear: true };
}

function noTime(cell: string): TimeRefusal {
  return { refused: `"${cell}" is not a time`, isUnclear: false };
}

/** Seconds since 1970 of this century's end, and milliseconds of 1973: a plain number above it counts milliseconds. */
const MILLISECONDS_FROM = 1e11;

function numberBase(first: number, said: TimeWriting, decimal: DecimalSign): TimeBase {
  const isUnixMilliseconds = said.scale === null && first > MILLISECONDS_FROM;
  const scale = said.scale ?? (isUnixMilliseconds ? 1e-3 : 1);
  // The first row is taken off before scaling, so that a large start costs no digits.
  const read: TimeReader = (time) => (numberInCell(time, decimal) - first) * scale;
  const assumed = said.scale === null ? (isUnixMilliseconds ? 'ms' : 's') : null;
  return { read, kind: 'number', assumed };
}

/** A time of day goes on over midnight: a fall by more than half a day is the next one. */
function clockReader(parts: ClockParts | null): TimeReader {
  let days = 0;
  let last = Number.NEGATIVE_INFINITY;
  return (time) => {
    const seconds = secondsOfDayTime(time.trim(), parts);
    if (last - (seconds + days) > DAY / 2) days += DAY;
    const at = seconds + days;
    if (at > last) last = at;
    return at;
  };
}

function instantBase(parts: ClockParts | null, order: DayOrder | null): TimeBase {
  let knownDate = '';
  let knownDay = Number.NaN;
  const read: TimeReader = (time, dateCell) => {
    const { date, clock } = dateCell === null ? splitInstant(time) : { date: dateCell.trim(), clock: time.trim() };
    if (date === null) return Number.NaN;
    if (date !== knownDate) {
      const day = secondsOfDay(date, order);
      knownDate = date;
      knownDay = typeof day === 'number' ? day : Number.NaN;
    }
    return knownDay + secondsOfDayTime(clock, parts);
  };
  return { read, kind: 'instant', assumed: null };
}
