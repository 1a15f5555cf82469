import type { EfficiencyPoint, Entry } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { EfficiencyRun, RunPoint } from './efficiency-figures.ts';
import { runMean } from './run-mean.ts';
import { type FullLoad, runPoint, shareOf } from './run-point.ts';
import { fullLoads, runPort } from './shared-loads.ts';

const NO_RATING = missing('rated power not known', ['rated power']);

/** Points of the whole device by what they have in common, in the order of the entry. `rated` is the power of the whole device. */
export function efficiencyRuns(entry: Entry, rated: Known<'power'> = NO_RATING): readonly EfficiencyRun[] {
  const whole = entry.efficiency.filter((point) => point.of === null);
  const groups = Map.groupBy(whole, (point) =>
    [point.port, point.line?.quantity.nominal, settingsOf(point).join('+'), point.place, isReported(point)].map(String).join('|'),
  );
  return [...groups.values()].flatMap((points) => runOf(points, entry, rated));
}

/** What a system says of itself, and what stands in print on the device or was assumed, is no measurement. */
export function isReported({ method, instrument, efficiency, input }: EfficiencyPoint): boolean {
  const evidence = (efficiency ?? input)?.evidence ?? 'measured';
  return methodClass(method, instrument) === 'reported' || evidence === 'printed' || evidence === 'marked' || evidence === 'assumed';
}

/** Voltages that were set: one, or one for each of several ports. */
function settingsOf({ output, loads }: EfficiencyPoint): readonly (number | null)[] {
  const facts = loads.length === 0 ? [output] : loads.map((load) => load.output);
  return facts.map((fact) => fact?.quantity.nominal ?? null);
}

function runOf(points: readonly EfficiencyPoint[], entry: Entry, rated: Known<'power'>): readonly EfficiencyRun[] {
  const [first] = points;
  if (first === undefined) return [];
  const settings = settingsOf(first);
  const ids = first.loads.length === 0 ? portOf(entry, first.port) : first.loads.map(({ port }) => port);
  const ports = ids.map((id, index) => runPort(entry, id, settings[index] ?? null));
  const isShared = first.loads.length > 0;
  const fullAmps = isShared ? null : (ports[0]?.fullAmps ?? null);
  const full = isShared ? fullLoads(ports, rated) : null;
  const computed = points.filter((point) => point.statistic === 'point').map((point) => runPoint(point, { fullAmps, ports, full }));
  const { mean, span } = runMean(points, computed);
  return [
    {
      port: ids.length === 0 ? first.port : ids.join(' + '),
      ports,
      setting: settings.every((volts) => volts === settings[0]) ? (settings[0] ?? null) : null,
      settings: settingWords(settings),
      line: first.line?.quantity.nominal ?? null,
      place: first.place,
      isReported: isReported(first),
      fullAmps,
      full,
      points: computed,
      mean,
      meanSpan: span,
    },
  ];
}

/** "20 V" for one port and for several at the same; "20 V + 9 V" where they differ. */
function settingWords(settings: readonly (number | null)[]): string | null {
  if (settings.some((volts) => volts === null)) return null;
  return [...new Set(settings)].length === 1 ? `${String(settings[0])} V` : settings.map((volts) => `${String(volts)} V`).join(' + ');
}

/** The port of a run; a device with one output needs not name it. */
function portOf({ ports }: Entry, id: string | null): readonly string[] {
  if (id !== null) return [id];
  const outputs = ports.filter((candidate) => candidate.direction !== 'input');
  return outputs.length === 1 ? outputs.map((only) => only.id) : [];
}

/** The same run with other points: its mean is that of them. */
export function withPoints(run: EfficiencyRun, points: readonly RunPoint[]): EfficiencyRun {
  const { mean, span } = runMean([], points);
  return { ...run, points, mean, meanSpan: span };
}

/** The same run with another full load: of one port its current, of several the loads of all. */
export function withFullLoad(run: EfficiencyRun, load: FullLoad): EfficiencyRun {
  const points = run.points.map((point) => ({ ...point, ...shareOf(point.source, load, run) }));
  return withPoints({ ...run, ...load }, points);
}
