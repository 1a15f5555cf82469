import type { EfficiencyPoint, Entry, Port } from '../entry/entry.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Derived } from './derived.ts';
import type { EfficiencyRun } from './efficiency/efficiency-figures.ts';
import { settingsOf } from './efficiency/port-settings.ts';
import { factValue } from './fact-value.ts';

/** The efficiency that stands for a device, with the conditions it was taken under. */
export interface TellingEfficiency {
  readonly value: Known<'ratio'>;
  /** As the author wrote it; null for a mean that was worked out. */
  readonly written: string | null;
  /** Conditions: of a mean those that all its points share, without load, current and input power. */
  readonly conditions: EfficiencyPoint;
}

/**
 * The efficiency of the whole device that stands for it, at 230 V where it was measured there: the mean over 25, 50, 75 and 100 % of the
 * strongest port at its highest voltage, else a mean that the author states, else the point with the most power; null where none is known.
 */
export function tellingEfficiency(entry: Entry, { efficiency }: Pick<Derived, 'efficiency'>): TellingEfficiency | null {
  const known = entry.efficiency.filter((point) => point.efficiency !== null && point.of === null);
  const stated = preferring230(
    known.filter((point) => point.statistic === 'average'),
    lineOfPoint,
  )[0];
  const point = [...preferring230(known, lineOfPoint)].sort((one, other) => inputPower(other) - inputPower(one))[0];
  return computedMean(entry, efficiency.runs) ?? asWritten(stated ?? point);
}

function computedMean({ ports }: Entry, runs: readonly EfficiencyRun[]): TellingEfficiency | null {
  const outputs = ports.filter((port) => port.direction !== 'input');
  const most = Math.max(...outputs.map(portWatts));
  const strongest = outputs.filter((port) => portWatts(port) === most);
  const fitting = runs.filter((run) => !run.isReported && !isMissing(run.mean) && isAtHighest(run, strongest));
  const run = preferring230(fitting, ({ line }) => line)[0];
  const first = run?.points[0]?.source;
  if (run === undefined || first === undefined) return null;
  const conditions = { ...first, statistic: 'average', load: null, current: null, input: null, efficiency: null } as const;
  return { value: run.mean, written: null, conditions };
}

function isAtHighest({ port: id, setting }: EfficiencyRun, strongest: readonly Port[]): boolean {
  const port = strongest.find((candidate) => candidate.id === id);
  const highest = port === undefined ? null : (settingsOf(port)?.highest ?? null);
  return highest !== null && setting !== null && Math.abs(setting - highest) <= 0.02 * highest;
}

function portWatts({ power }: Port): number {
  return power?.quantity.nominal ?? 0;
}

function asWritten(point: EfficiencyPoint | undefined): TellingEfficiency | null {
  if (point === undefined) return null;
  const { efficiency } = point;
  const value = efficiency === null ? missing('not measured', ['efficiency']) : factValue(efficiency);
  return { value, written: efficiency?.quantity.written ?? null, conditions: point };
}

function preferring230<Figure>(figures: readonly Figure[], lineOf: (figure: Figure) => number | null): readonly Figure[] {
  const at230 = figures.filter((figure) => lineOf(figure) === 230);
  return at230.length > 0 ? at230 : figures;
}

function lineOfPoint({ line }: EfficiencyPoint): number | null {
  return line?.quantity.nominal ?? null;
}

function inputPower(point: EfficiencyPoint): number {
  return point.input?.quantity.nominal ?? 0;
}
