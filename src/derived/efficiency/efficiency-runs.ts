import type { EfficiencyPoint, Entry, Port } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { electricPower } from '../../formulas/energy/electric-power.ts';
import { powerLoss } from '../../formulas/energy/power-loss.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import { offeredPoints } from '../offered-points.ts';
import type { EfficiencyRun, RunPoint } from './efficiency-figures.ts';
import { runMean, spanOf } from './run-mean.ts';

/** Points of the whole device by what they have in common, in the order of the entry. */
export function efficiencyRuns(entry: Entry): readonly EfficiencyRun[] {
  const whole = entry.efficiency.filter((point) => point.of === null);
  const groups = Map.groupBy(whole, (point) =>
    [point.port, point.line?.quantity.nominal, point.output?.quantity.nominal, point.place, isReported(point)].map(String).join('|'),
  );
  return [...groups.values()].flatMap((points) => runOf(points, entry));
}

function isReported({ method, instrument }: EfficiencyPoint): boolean {
  return methodClass(method, instrument) === 'reported';
}

function runOf(points: readonly EfficiencyPoint[], entry: Entry): readonly EfficiencyRun[] {
  const [first] = points;
  if (first === undefined) return [];
  const port = portOf(entry, first.port);
  const setting = first.output?.quantity.nominal ?? null;
  const fullAmps = port === null || setting === null ? null : fullAmpsOf(port, setting);
  const computed = points.filter((point) => point.statistic === 'point').map((point) => runPoint(point, fullAmps));
  const { mean, span } = runMean(points, computed);
  const line = first.line?.quantity.nominal ?? null;
  return [
    {
      port: port?.id ?? first.port,
      setting,
      line,
      place: first.place,
      isReported: isReported(first),
      fullAmps,
      points: computed,
      mean,
      meanSpan: span,
    },
  ];
}

/** The port of a run; a device with one output needs not name it. */
function portOf({ ports }: Entry, id: string | null): Port | null {
  const outputs = ports.filter((candidate) => candidate.direction !== 'input');
  const only = outputs.length === 1 ? (outputs[0] ?? null) : null;
  return id === null ? only : (ports.find((candidate) => candidate.id === id) ?? null);
}

/** Amperes that a port offers at a voltage, within 2 %; the most where several offers do. */
function fullAmpsOf(port: Port, volts: number): number | null {
  const fitting = offeredPoints(port).filter(
    ({ voltage, current }) => !isMissing(voltage) && !isMissing(current) && Math.abs(voltage.nominal - volts) <= 0.02 * volts,
  );
  const amps = fitting.map(({ current }) => (isMissing(current) ? 0 : current.nominal));
  return amps.length === 0 ? null : Math.max(...amps);
}

function runPoint(source: EfficiencyPoint, fullAmps: number | null): RunPoint {
  const volts = source.measuredOutput ?? source.output;
  const amps = ampsOf(source, volts?.quantity.nominal ?? null, fullAmps);
  const output = outputOf(source, amps);
  const input = source.input === null ? missing('input power not given', ['input power']) : factValue(source.input);
  const stated = source.efficiency === null ? null : factValue(source.efficiency);
  // What was measured on both sides is worked out; a stated figure stands where only it is there.
  const worked = applyFormula(powerEfficiency, { output, input });
  const efficiency = isMissing(worked) ? (stated ?? worked) : worked;
  return {
    source,
    share: shareOf(source, amps, fullAmps),
    output,
    efficiency,
    span: spanOf(efficiency, source),
    loss: applyFormula(powerLoss, { input, output }),
  };
}

function ampsOf(source: EfficiencyPoint, volts: number | null, fullAmps: number | null): number | null {
  if (source.current !== null) return source.current.quantity.nominal;
  const { load } = source;
  if (load === null) return null;
  const { dimension, nominal } = load.quantity;
  if (dimension === 'ratio') return fullAmps === null ? null : nominal * fullAmps;
  if (volts === null || volts <= 0 || nominal <= 0) return null;
  return dimension === 'power' ? nominal / volts : volts / nominal;
}

function outputOf(source: EfficiencyPoint, amps: number | null): Known<'power'> {
  const { current, load } = source;
  const volts = source.measuredOutput ?? source.output;
  if (current !== null && volts !== null) return applyFormula(electricPower, { voltage: factValue(volts), current: factValue(current) });
  if (load?.quantity.dimension === 'power') return factValue({ ...load, quantity: { ...load.quantity, dimension: 'power' } });
  return missing(amps === null ? 'load not given' : 'output current not measured', ['output current']);
}

function shareOf(source: EfficiencyPoint, amps: number | null, fullAmps: number | null): number | null {
  if (source.load?.quantity.dimension === 'ratio') return source.load.quantity.nominal;
  return amps === null || fullAmps === null || fullAmps <= 0 ? null : amps / fullAmps;
}

/** The same run with other points: its mean is that of them. */
export function withPoints(run: EfficiencyRun, points: readonly RunPoint[]): EfficiencyRun {
  const { mean, span } = runMean([], points);
  return { ...run, points, mean, meanSpan: span };
}

/** The same run with another current as full load. */
export function withFullAmps(run: EfficiencyRun, fullAmps: number): EfficiencyRun {
  const points = run.points.map((point) => {
    const amps = ampsOf(point.source, (point.source.measuredOutput ?? point.source.output)?.quantity.nominal ?? null, run.fullAmps);
    return { ...point, share: amps === null ? null : amps / fullAmps };
  });
  return withPoints({ ...run, fullAmps }, points);
}
