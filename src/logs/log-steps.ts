import { formatInterval } from '../units/format.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { levelChange, rowFrom, type Stretch } from './level-change.ts';
import { levelSteps } from './level-steps.ts';
import type { LogChange, LogStep } from './log-summary.ts';
import type { LogSeries } from './log-rows.ts';
import { loggedValue } from './logged-value.ts';

/** An event that the author names. */
export interface NamedEvent {
  /** Seconds from the first row. */
  readonly at: number;
  readonly words: string;
}

/** Found steps that a page lists; a load that cycles has thousands. */
const LISTED = 12;
/** An event was noted by hand: a step this close is its own. Seconds. */
const HAND_SECONDS = 3;
/** Steps so soon after an event belong to it. Seconds. */
const EVENT_SECONDS = 5;
/** Quantities that steps are looked for in; the power follows from the first two. */
const STEPPING = ['voltage', 'current'] as const;

/** Steps of a log in the order of time: each named event with what it did, and the greatest of those that only stand in the numbers. */
export function logSteps(
  log: { readonly time: Float64Array; readonly series: readonly LogSeries[]; readonly usual: number; readonly at: string },
  events: readonly NamedEvent[],
): readonly LogStep[] {
  const { time, series, usual } = log;
  const shown = series.filter(({ quantity }) => quantity === 'voltage' || quantity === 'current' || quantity === 'power');
  const stepping = shown.filter(({ quantity }) => STEPPING.some((word) => word === quantity));
  const found = stepRows(time, stepping.length > 0 ? stepping : shown, usual);
  const named = events.map(({ at, words }) => ({ row: rowOfEvent(time, found, at, usual), event: words }));
  const eventRows = named.map(({ row }) => row);
  // What follows an event at once is its doing: the port that goes dark comes back.
  const isOfEvent = (row: number): boolean => eventRows.some((at) => row >= at && (time[row] ?? 0) - (time[at] ?? 0) <= EVENT_SECONDS);
  const unnamed = found.filter((row) => !isOfEvent(row)).map((row) => ({ row, event: null }));
  const ends = [...eventRows, ...unnamed.map(({ row }) => row)].sort((one, other) => one - other);
  const all = [...named, ...unnamed].map(({ row, event }): LogStep => {
    const stretch = { from: ends.findLast((end) => end < row) ?? 0, at: row, to: ends.find((end) => end > row) ?? time.length };
    return { at: round(time[row] ?? 0), event, changes: shown.flatMap((each) => changeOf(log, each, stretch) ?? []) };
  });
  const listed = new Set(
    all
      .filter(({ event }) => event === null)
      .sort((one, other) => size(other) - size(one))
      .slice(0, LISTED),
  );
  return all.filter((step) => step.event !== null || listed.has(step)).sort((one, other) => one.at - other.at);
}

/** Rows at which any of the columns steps; columns that step at about the same time make one. */
function stepRows(time: Float64Array, series: readonly LogSeries[], usual: number): readonly number[] {
  const rows = series.flatMap(({ values }) => levelSteps(time, values, greatest(values))).sort((one, other) => one - other);
  const apart = Math.max(2 * usual, 0.5);
  return rows.filter((row, index) => index === 0 || (time[row] ?? 0) - (time[rows[index - 1] ?? 0] ?? 0) > apart);
}

function greatest(values: Float64Array): number {
  let most = 0;
  for (let row = 0; row < values.length; row += 1) {
    const size = Math.abs(values[row] ?? 0);
    if (size > most) most = size;
  }
  return most;
}

/** The first step at the time that the author noted, or the row of that time where nothing steps. */
function rowOfEvent(time: Float64Array, found: readonly number[], moment: number, usual: number): number {
  const room = Math.max(HAND_SECONDS, 2 * usual);
  const step = found.find((row) => Math.abs((time[row] ?? 0) - moment) <= room);
  return step ?? Math.min(time.length - 1, rowFrom(time, moment));
}

function changeOf(
  log: { readonly time: Float64Array; readonly usual: number; readonly at: string },
  series: LogSeries,
  stretch: Stretch,
): LogChange | null {
  const change = levelChange(log.time, series.values, stretch);
  if (change === null) return null;
  const { quantity, dimension, resolution } = series;
  const value = (number: number, what: string): ReturnType<typeof loggedValue> =>
    loggedValue(dimension, number, { resolution, written: `${quantity} ${what} ${round(log.time[stretch.at] ?? 0)} s`, at: log.at });
  return {
    quantity,
    before: value(change.before, 'before'),
    after: value(change.after, 'after'),
    lowest: value(change.lowest, 'lowest after'),
    highest: value(change.highest, 'highest after'),
    settling: settlingOf(change.settling, log),
  };
}

/** A settling is known to one step between rows. */
function settlingOf(seconds: number | null, { usual, at }: { readonly usual: number; readonly at: string }): Known<'time'> {
  if (seconds === null) return missing('did not settle within five seconds or before the next step');
  const from = { resolution: usual / 10, written: `settling, rows ${formatInterval(plain(usual), 'time').text} apart`, at };
  return loggedValue('time', seconds, from, { low: Math.max(0, seconds - usual), high: seconds + usual });
}

function plain(seconds: number): { readonly low: number; readonly nominal: number; readonly high: number; readonly significant: number } {
  return { low: seconds, nominal: seconds, high: seconds, significant: 2 };
}

/** Change of level against the greater level, of the quantity that changes most. */
function size({ changes }: LogStep): number {
  return Math.max(
    0,
    ...changes.map(({ before, after }) => {
      const most = Math.max(Math.abs(before.nominal), Math.abs(after.nominal));
      return most === 0 ? 0 : Math.abs(after.nominal - before.nominal) / most;
    }),
  );
}

/** Microseconds are the finest that a log holds. */
function round(seconds: number): number {
  return Math.round(seconds * 1e6) / 1e6;
}
