import type { Entry, MeasuredPoint } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import type { LogSummary } from '../../logs/log-summary.ts';
import { readQuantity } from '../../units/read-quantity.ts';
import { valueOf } from '../../values/from-quantity.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { conditionValue } from '../condition-value.ts';
import { factValue, isOf } from '../fact-value.ts';
import { HELD_SHARE, NOT_SHOWN, SHORTEST_TEST, type SustainedRun } from './sustained-run.ts';

/** Every test of how long the power lasts: of the measured points by port, line, voltage and load, then of the logs that hold a power. */
export function sustainedRuns(entry: Entry, logs: readonly LogSummary[], rated: Known<'power'>): readonly SustainedRun[] {
  const timed = entry.measurements.flatMap(timedPoint);
  const keys = [...new Set(timed.map(runKey))];
  const delivering = logs.filter((log) => isOutput(entry, log.port) && isAtFullLoad(log, entry, rated));
  return [...keys.map((key) => runOf(timed.filter((one) => runKey(one) === key))), ...delivering.map(runOfLog)];
}

/** From here up a load counts as the full one. */
const FULL_LOAD_SHARE = 0.9;

interface TimedPoint {
  readonly index: number;
  readonly point: MeasuredPoint;
  readonly after: Value<'time'>;
  readonly power: Value<'power'>;
}

/** A point with its time; what a system reports of itself is none. */
function timedPoint(point: MeasuredPoint, index: number): readonly TimedPoint[] {
  if (point.subject !== 'sustained power' || !isOf(point.value, 'power')) return [];
  if (methodClass(point.method, point.instrument) === 'reported') return [];
  const after = conditionValue(point, 'after', 'time', 'time');
  const power = factValue(point.value, { bound: 'use' });
  return isMissing(after) || isMissing(power) ? [] : [{ index, point, after, power }];
}

function runKey({ point: { conditions } }: TimedPoint): string {
  return JSON.stringify(['port', 'line', 'output', 'load'].map((word) => conditions[word] ?? null));
}

function runOf(unsorted: readonly TimedPoint[]): SustainedRun {
  const points = [...unsorted].sort((one, other) => one.after.nominal - other.after.nominal);
  const [first, last] = [points[0], points.at(-1)];
  const peak = points.reduce<TimedPoint | undefined>(
    (most, one) => (most === undefined || one.power.nominal > most.power.nominal ? one : most),
    undefined,
  );
  const gone = missing('no point with a time');
  const tested: Known<'time'> = last?.after ?? gone;
  return {
    port: first?.point.conditions['port'] ?? null,
    log: null,
    line: first?.point.conditions['line'] ?? null,
    peak: peak?.power ?? gone,
    sustained: last === undefined ? gone : sustainedOf(last),
    droppedAfter: dropOf(points, peak?.power.nominal ?? 0),
    tested,
    ambient: ambientOf(points),
    points: points.map(({ index }) => index),
  };
}

function sustainedOf({ after, power }: TimedPoint): Known<'power'> {
  if (after.nominal >= SHORTEST_TEST) return power;
  return missing(`${NOT_SHOWN}: tested for ${(after.nominal / 60).toFixed(0)} min, 30 min are asked`, ['a test of 30 min']);
}

/** The first point from which on all lie below the share of the peak. */
function dropOf(points: readonly TimedPoint[], peak: number): Known<'time'> {
  const lastHeld = points.findLastIndex(({ power }) => power.nominal >= HELD_SHARE * peak);
  return points[lastHeld + 1]?.after ?? missing('did not drop');
}

function ambientOf(points: readonly TimedPoint[]): Known<'temperature'> {
  const given = points.map(({ point }) => conditionValue(point, 'ambient', 'temperature', 'air temperature'));
  return given.find((ambient) => !isMissing(ambient)) ?? given[0] ?? missing('air temperature not given', ['ambient']);
}

/** A log at a fraction of the listed power says nothing about how long that power lasts. */
function isAtFullLoad({ port, power }: LogSummary, { ports }: Entry, rated: Known<'power'>): boolean {
  if (isMissing(power.peak)) return false;
  const listed = ports.find(({ id }) => id === port)?.power?.quantity.nominal ?? (port === null && !isMissing(rated) ? rated.nominal : 0);
  return power.peak.nominal >= FULL_LOAD_SHARE * listed;
}

/** A log of what is taken in (a recharge) says nothing about the output. */
function isOutput({ ports }: Entry, port: string | null): boolean {
  return port === null || ports.find(({ id }) => id === port)?.direction !== 'input';
}

function runOfLog(log: LogSummary): SustainedRun {
  const { port, id, line, power, ambient } = log;
  const reading = ambient === null ? null : readQuantity(ambient, 'temperature');
  const air =
    reading?.ok === true
      ? valueOf({ quantity: reading.value, evidence: 'measured' }, [...log.path, 'ambient'].join('.'))
      : missing('air temperature not given', ['ambient']);
  return {
    port,
    log: id,
    line,
    peak: power.peak,
    sustained: power.sustained,
    droppedAfter: power.droppedAfter,
    tested: power.underLoad,
    ambient: air,
    points: [],
  };
}
