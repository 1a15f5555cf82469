import type { LogFile } from '../entry/entry.ts';
import type { Dimension } from '../units/dimension.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { columnStatistics, type ColumnStatistics } from './column-statistics.ts';
import { columnGaps, gapSpan, type GapFrame, type IntegralSpan } from './gap-span.ts';
import { logCurve } from './log-curve.ts';
import type { LogChannel, LogPower, LogSummary } from './log-summary.ts';
import type { LogRows, LogSeries } from './log-rows.ts';
import { logSteps, type NamedEvent } from './log-steps.ts';
import { loggedValue } from './logged-value.ts';
import { powerCourse } from './power-course.ts';
import type { TimeGap } from './time-gaps.ts';
import { withPower } from './with-power.ts';

/** A test of sustained power lasts at least this long, seconds (common practice: the case has then come near its final temperature). */
const SUSTAINED_FROM = 1800;

interface Measured {
  readonly series: LogSeries;
  readonly statistics: ColumnStatistics;
}

/** What is the same for every value of a log. */
interface Frame {
  readonly log: LogFile;
  readonly at: string;
  readonly time: Float64Array;
  readonly gaps: readonly TimeGap[];
  readonly usual: number;
}

/** What is known of the times of a log. */
interface LogTimes {
  readonly usual: number;
  readonly gaps: readonly TimeGap[];
  readonly events: readonly NamedEvent[];
}

/** Everything that the rows of a log say; null where there is no row. */
export function summariseLog(log: LogFile, rows: LogRows, { usual, gaps, events }: LogTimes): LogSummary | null {
  const { time } = rows;
  const series = withPower(rows);
  const measured = series.flatMap((each): Measured[] => {
    const statistics = columnStatistics(time, each.values);
    return statistics === null ? [] : [{ series: each, statistics }];
  });
  const last = time.at(-1);
  if (last === undefined || measured.length === 0) return null;
  const frame: Frame = { log, at: log.path.join('.'), time, gaps, usual };
  const of = (quantity: string): Measured | null => measured.find((each) => each.series.quantity === quantity) ?? null;
  return {
    ...{ id: log.id, file: log.file, path: log.path, port: log.port, line: log.line, ambient: log.ambient, note: log.note },
    ...{ rows: time.length, start: rows.start, interval: usual },
    duration: loggedValue('time', last, { resolution: timeResolution(usual), written: `first to last row of ${log.file}`, at: frame.at }),
    gaps: frame.gaps.map(({ from, to }) => ({ from, to })),
    channels: measured.map((each) => channelOf(each, frame)),
    energy: integralOf('energy', of('power'), frame, 'volts and amperes, or watts'),
    charge: integralOf('charge', of('current'), frame, 'amperes'),
    power: powerOf(of('power'), frame),
    steps: logSteps({ time, series: measured.map((each) => each.series), usual, at: frame.at }, events),
    curves: measured.map(({ series: each, statistics }) =>
      logCurve(time, each, [statistics.lowestRow, statistics.highestRow], statistics.rows < time.length),
    ),
  };
}

function channelOf({ series, statistics }: Measured, { log, at, time, gaps, usual }: Frame): LogChannel {
  const { quantity, dimension, head, resolution } = series;
  const value = (number: number, what: string, span?: IntegralSpan): ReturnType<typeof loggedValue<Dimension>> =>
    loggedValue(
      dimension,
      number,
      { resolution, written: `${what} ${head === null ? 'volts times amperes' : `"${head}"`} in ${log.file}`, at },
      span,
    );
  return {
    ...{ quantity, dimension, head, deviation: statistics.deviation, rows: statistics.rows, resolution },
    mean: value(statistics.mean, 'mean of', meanSpan({ series, statistics }, { time, gaps, usual })),
    lowest: { value: value(statistics.lowest, 'lowest'), at: time[statistics.lowestRow] ?? 0 },
    highest: { value: value(statistics.highest, 'highest'), at: time[statistics.highestRow] ?? 0 },
  };
}

/** A mean over time is as open as its integral. */
function meanSpan({ series, statistics }: Measured, frame: GapFrame): IntegralSpan {
  if (statistics.covered === 0) return { low: statistics.mean, high: statistics.mean };
  const { low, high } = gapSpan(series.values, statistics, frame);
  return { low: low / statistics.covered, high: high / statistics.covered };
}

/** Integral over time; a gap may have held anything from the lowest to the highest value of the log, and the interval says so. */
function integralOf<D extends 'energy' | 'charge'>(
  dimension: D,
  measured: Measured | null,
  { log, at, gaps, time, usual }: Frame,
  needed: string,
): Known<D> {
  if (measured === null) return missing(`the log ${log.id} has no ${needed}`, [needed]);
  const { statistics, series } = measured;
  if (statistics.covered === 0) return missing(`the log ${log.id} has a single row`, ['a second row']);
  const span = gapSpan(series.values, statistics, { time, gaps, usual });
  const resolution = series.resolution * (time.at(-1) ?? 0);
  return loggedValue(dimension, statistics.integral, { resolution, written: `sum over time in ${log.file}`, at }, span);
}

function powerOf(measured: Measured | null, { log, at, time, usual, gaps }: Frame): LogPower {
  const course = measured === null ? null : powerCourse(time, measured.series.values);
  if (measured === null || course === null) {
    const none = missing(`the log ${log.id} has no power: it needs volts and amperes, or watts`, ['power over time']);
    return { peak: none, sustained: none, droppedAfter: none, underLoad: none };
  }
  const { peak, loadFrom, loadTo, atTheEnd, droppedAfter } = course;
  const { resolution } = measured.series;
  const watts = (number: number, written: string): Known<'power'> => loggedValue('power', number, { resolution, written, at });
  const seconds = (number: number, written: string): Known<'time'> =>
    loggedValue('time', number, { resolution: timeResolution(usual), written, at });
  const unseen = gapsWithin(columnGaps(measured.series.values, measured.statistics, { time, gaps, usual }), loadFrom, loadTo);
  const seen = loadTo - loadFrom - unseen;
  const isLong = seen >= SUSTAINED_FROM;
  const without = unseen > 0 ? ' with rows' : '';
  const isShort = missing(`sustained not shown: ${inWholeUnits(seen)} under load${without}, 30 min are needed`, ['a test of 30 minutes']);
  return {
    peak: watts(peak, `highest mean over ten seconds in ${log.file}`),
    sustained: isLong ? watts(atTheEnd, `mean of the last ten minutes under load in ${log.file}`) : isShort,
    droppedAfter:
      droppedAfter === null
        ? missing('the power did not fall below 95 % of its peak')
        : seconds(droppedAfter, `fall of the power in ${log.file}`),
    underLoad: seconds(loadTo - loadFrom, `load on to load off in ${log.file}`),
  };
}

/** Seconds without numbers between two moments: nobody knows what the power did in them. */
function gapsWithin(gaps: readonly TimeGap[], from: number, to: number): number {
  return gaps.reduce((sum, gap) => sum + Math.max(0, Math.min(gap.to, to) - Math.max(gap.from, from)), 0);
}

/** Whole minutes, or whole seconds below ten minutes, never rounded up to what is asked for. */
function inWholeUnits(seconds: number): string {
  return seconds < 600 ? `${Math.floor(seconds)} s` : `${Math.floor(seconds / 60)} min`;
}

/** A time of a log is told to its step between rows; to a second where that is longer, since the row itself has its own time. */
function timeResolution(usual: number): number {
  return Math.min(1, Math.max(usual, 1e-3));
}
