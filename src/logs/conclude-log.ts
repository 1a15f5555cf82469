import type { LogFile } from '../entry/entry.ts';
import { didYouMean } from '../entry/nearest-word.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { AssumedUnit, LogReader } from './log-reader.ts';
import type { LogFault } from './log-rule.ts';
import { seriesOf, type LogRows } from './log-rows.ts';
import type { NamedEvent } from './log-steps.ts';
import type { LogGap, LogSummary } from './log-summary.ts';
import { summariseLog } from './summarise-log.ts';
import { timeGaps, usualStep, type TimeGap } from './time-gaps.ts';

/** What came out of one log: its figures, and what is wrong with it. */
export interface ConcludedLog {
  readonly summary: LogSummary | null;
  readonly faults: readonly LogFault[];
}

/** Sums up what a reader took in, with everything that can be told only once all rows are there. */
export function concludeLog(log: LogFile, { rows, faults, assumed }: ReturnType<LogReader['end']>): ConcludedLog {
  const { time } = rows;
  const nothing: LogFault = { rule: 'log-empty', message: 'The file has a heading and no rows', at: { in: 'file', line: 1, cell: null } };
  if (time.length === 0) return { summary: null, faults: faults.length === 0 ? [nothing] : faults };
  const usual = usualStep(time);
  const gaps = timeGaps(time, usual);
  const { events, faults: ofEvents } = namedEvents(log, time.at(-1) ?? 0);
  const all = [
    ...faults,
    ...assumed.map((unit) => unsaidUnit(unit, log)),
    ...gapFaults(rows, usual, gaps),
    ...powerFault(rows),
    ...ofEvents,
    ...strangeColumns(log, rows),
  ];
  return { summary: summariseLog(log, rows, { usual, gaps, events }), faults: all };
}

function unsaidUnit({ quantity, head, unit }: AssumedUnit, log: LogFile): LogFault {
  const message = `The column "${head}" states no unit; it is read in ${unit}`;
  const path = quantity in log.columns ? [...log.path, 'columns', quantity] : log.path;
  return { rule: 'log-unit-unsaid', message, at: { in: 'entry', path, part: path === log.path ? 'key' : 'value' } };
}

/** Gaps that are told one by one. */
const SHOWN_GAPS = 5;

function gapFaults({ lineOf }: LogRows, usual: number, gaps: readonly TimeGap[]): readonly LogFault[] {
  const told = gaps.slice(0, SHOWN_GAPS).map((gap): LogFault => {
    const message = `No rows for ${inWords(gap.to - gap.from)}, from ${inWords(gap.from)} to ${inWords(gap.to)} after the first row; rows usually stand ${inWords(usual)} apart`;
    return { rule: 'log-gap', message, at: { in: 'file', line: lineOf(gap.row + 1), cell: null } };
  });
  const last = gaps.at(-1);
  if (last === undefined || gaps.length <= SHOWN_GAPS) return told;
  const message = `${gaps.length - SHOWN_GAPS} more gaps, ${inWords(lengthOf(gaps.slice(SHOWN_GAPS)))} in all`;
  return [...told, { rule: 'log-gap', message, at: { in: 'file', line: lineOf(last.row + 1), cell: null } }];
}

/** An instrument named for a column that is not there would widen nothing. */
function strangeColumns({ instrument, path }: LogFile, { series }: LogRows): readonly LogFault[] {
  if (instrument === null || typeof instrument === 'string') return [];
  const known = [...series.map(({ quantity }) => quantity), 'time'];
  return Object.keys(instrument)
    .filter((word) => !known.includes(word))
    .map((word): LogFault => {
      const nearest = didYouMean(word, known);
      const message = `An instrument is named for "${word}", which is no column of this log; it has ${known.join(', ')}.${nearest === null ? '' : ` ${nearest}`}`;
      return { rule: 'log-instrument', message, at: { in: 'entry', path: [...path, 'instrument', word], part: 'key' } };
    });
}

/** Seconds without rows. */
function lengthOf(gaps: readonly LogGap[]): number {
  return gaps.reduce((sum, { from, to }) => sum + to - from, 0);
}

function inWords(seconds: number): string {
  return seconds >= 600 ? `${Number((seconds / 60).toPrecision(4))} min` : `${Number(seconds.toPrecision(4))} s`;
}

/** Rows in which the power may lie this far from volts times amperes: the three are not read at one moment. */
const POWER_SHARE = 0.03;

/** Compares the means, which readings at slightly different moments do not disturb. */
function powerFault(rows: LogRows): readonly LogFault[] {
  const [power, voltage, current] = [seriesOf(rows, 'power'), seriesOf(rows, 'voltage'), seriesOf(rows, 'current')];
  if (power === null || voltage === null || current === null) return [];
  let [stated, product] = [0, 0];
  power.values.forEach((watts, row) => {
    const computed = (voltage.values[row] ?? Number.NaN) * (current.values[row] ?? Number.NaN);
    if (Number.isNaN(computed) || Number.isNaN(watts)) return;
    stated += watts;
    product += computed;
  });
  const count = rows.time.length;
  if (Math.abs(stated - product) <= POWER_SHARE * Math.max(Math.abs(stated), Math.abs(product)) + power.resolution * count) return [];
  const words = (sum: number): string => `${Number((sum / count).toPrecision(4))} W`;
  const message = `The mean of "${power.head ?? ''}" is ${words(stated)}, that of volts times amperes ${words(product)}`;
  return [{ rule: 'log-power-disagrees', message, at: { in: 'file', line: rows.lineOf(0), cell: null } }];
}

function namedEvents(log: LogFile, end: number): { readonly events: readonly NamedEvent[]; readonly faults: readonly LogFault[] } {
  const faults: LogFault[] = [];
  const events = Object.entries(log.events).flatMap(([time, words]): NamedEvent[] => {
    const read = readQuantity(time, 'time');
    const fault = (message: string): [] => {
      faults.push({ rule: 'log-event', message, at: { in: 'entry', path: [...log.path, 'events', time], part: 'key' } });
      return [];
    };
    if (!read.ok) return fault(`"${time}" is not a time: write it as in "20 s" or "1.5 min"`);
    if (read.value.nominal < 0 || read.value.nominal > end) return fault(`${time} is not within the log, which lasts ${inWords(end)}`);
    return [{ at: read.value.nominal, words }];
  });
  return { events, faults };
}
