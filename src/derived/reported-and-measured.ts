import type { Entry, Fact, MeasuredSubject } from '../entry/entry.ts';
import { methodClass } from '../entry/method-class.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { Dimension } from '../units/dimension.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import type { Derived } from './derived.ts';
import { factValue } from './fact-value.ts';
import { reportedEfficiencies } from './reported-efficiencies.ts';

/** A figure that a system gives of itself, beside the nearest one that was measured under conditions that do not differ. */
export interface ReportedAndMeasured {
  readonly subject: MeasuredSubject | 'efficiency' | 'average efficiency' | 'peak efficiency';
  /** Port, or place on the device; null where neither is said. */
  readonly where: string | null;
  readonly reported: Value;
  readonly measured: Value;
  /** Who reports, in the author's words. */
  readonly by: string;
  /** Log that the measured one is from; null for a point. */
  readonly log: string | null;
  readonly agrees: boolean;
  /** Data path of the reported figure. */
  readonly path: Fact['path'];
}

interface Figure {
  readonly subject: MeasuredSubject;
  readonly value: Value;
  /** Conditions by the word of the format, the place among them. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly log: string | null;
}

interface ReportedFigure extends Figure {
  readonly by: string;
  readonly path: Fact['path'];
}

/** Rounding of a display and the loss in a short cable stay within this; common practice. */
const SLACK = 0.05;
/** Two places on one case differ by this much, kelvin; common practice. */
const SLACK_KELVIN = 5;

/** Every reported figure that something was measured beside, in the order of the entry. */
export function reportedAndMeasured(
  entry: Entry,
  { sustained, bank, efficiency }: Pick<Derived, 'sustained' | 'bank' | 'efficiency'>,
): readonly ReportedAndMeasured[] {
  const points = entry.measurements.flatMap((point): (ReportedFigure & { readonly isReported: boolean })[] => {
    const value = factValue(point.value, { bound: 'use' });
    if (isMissing(value) || point.value.evidence !== 'measured') return [];
    const conditions = { ...point.conditions, ...(point.place === null ? {} : { place: point.place }) };
    const isReported = methodClass(point.method, point.instrument) === 'reported';
    return [{ subject: point.subject, value, conditions, log: null, by: point.method ?? '', path: point.value.path, isReported }];
  });
  const reported = points.filter(({ isReported }) => isReported);
  const efficiencies = reportedEfficiencies(entry, efficiency);
  if (reported.length === 0) return efficiencies;
  const measured: readonly Figure[] = [
    ...points.filter(({ isReported }) => !isReported),
    ...sustained.flatMap(({ log, port, line, sustained: held, peak }) =>
      figureOfLog('sustained power', log, isMissing(held) ? peak : held, { port, line }),
    ),
    ...(bank?.delivered ?? []).flatMap(({ log, output, energy }) => figureOfLog('delivered energy', log, energy, { output })),
  ];
  return [...efficiencies, ...reported.flatMap((figure) => paired(figure, measured))];
}

function figureOfLog(
  subject: MeasuredSubject,
  log: string | null,
  value: Known,
  stated: Readonly<Record<string, string | null>>,
): readonly Figure[] {
  if (log === null || isMissing(value)) return [];
  const conditions = Object.fromEntries(Object.entries(stated).filter((pair): pair is [string, string] => pair[1] !== null));
  return [{ subject, value, conditions, log }];
}

/** The measured figure that is nearest; where any agrees, nothing is wrong. */
function paired(figure: ReportedFigure, measured: readonly Figure[]): readonly ReportedAndMeasured[] {
  const { subject, value, conditions, by, path } = figure;
  const beside = measured.filter(
    (other) => other.subject === subject && other.value.dimension === value.dimension && !differ(conditions, other.conditions),
  );
  const distance = (other: Figure): number => Math.abs(other.value.nominal - value.nominal);
  const [nearest] = beside.toSorted((one, other) => distance(one) - distance(other));
  if (nearest === undefined) return [];
  const where = conditions['port'] ?? conditions['place'] ?? null;
  return [{ subject, where, reported: value, measured: nearest.value, by, log: nearest.log, agrees: agree(value, nearest.value), path }];
}

/** Whether a condition that both state is another one; what only one of them states is not known to differ. */
function differ(one: Figure['conditions'], other: Figure['conditions']): boolean {
  return Object.entries(one).some(([key, written]) => {
    const against = other[key];
    return against !== undefined && NOT_COMPARED.every((word) => word !== key) && !isSame(written, against, DIMENSIONS[key]);
  });
}

/** Conditions of the instrument and not of the device. */
const NOT_COMPARED = ['bandwidth', 'emissivity', 'at'] as const;
const DIMENSIONS: Readonly<Record<string, Dimension>> = { line: 'voltage', output: 'voltage', ambient: 'temperature', after: 'time' };

function isSame(one: string, other: string, dimension: Dimension | undefined): boolean {
  if (one.trim().toLowerCase() === other.trim().toLowerCase()) return true;
  if (dimension === undefined) return false;
  const [first, second] = [leading(one, dimension), leading(other, dimension)];
  return first !== null && second !== null && Math.abs(first - second) <= SLACK * Math.abs(second);
}

/** The quantity that a condition begins with: 230 of "230 V 50 Hz". */
function leading(written: string, dimension: Dimension): number | null {
  const words = written.split(/\s+/u);
  for (const text of [written, words.slice(0, 2).join(' '), words[0] ?? '']) {
    const reading = readQuantity(text, dimension);
    if (reading.ok) return reading.value.nominal;
  }
  return null;
}

function agree(reported: Value, measured: Value): boolean {
  const slack = measured.dimension === 'temperature' ? SLACK_KELVIN : SLACK * Math.abs(measured.nominal);
  return reported.low <= measured.high + slack && reported.high >= measured.low - slack;
}
