import type { Bench } from '../../entry/bench.ts';
import type { EfficiencyPoint, Entry, Fact, InsulationPlace, LogFile, MeasuredPoint, BenchLink } from '../../entry/entry.ts';
import { methodFinder, type MethodFinder, type UnknownMethod } from './methods-named.ts';

type Find = MethodFinder['find'];

/** The entry with the method of the bench beside everything that was measured by one, so that each such value leads to it. */
export function doneByMethod(entry: Entry, bench: Bench): { readonly entry: Entry; readonly unknown: readonly UnknownMethod[] } {
  if (bench.methods.length === 0) return { entry, unknown: [] };
  const { find, unknown } = methodFinder(bench);
  const done: Entry = {
    ...entry,
    body: { ...entry.body, mass: factBy(entry.body.mass, find(null, 'mass', ['body', 'mass'])) },
    insulation: entry.insulation.map((place) => insulationBy(place, find)),
    efficiency: entry.efficiency.map((point) => efficiencyBy(point, find)),
    measurements: entry.measurements.map((point) => pointBy(point, find)),
    logs: entry.logs.map((log) => logBy(log, find)),
  };
  return { entry: done, unknown: unknown() };
}

function efficiencyBy(point: EfficiencyPoint, find: Find): EfficiencyPoint {
  const methods = find(point.method, 'efficiency', runPath(point.path));
  if (methods.length === 0) return point;
  return {
    ...point,
    byMethod: methods,
    measuredOutput: factBy(point.measuredOutput, methods),
    current: factBy(point.current, methods),
    input: factBy(point.input, methods),
    efficiency: factBy(point.efficiency, methods),
  };
}

/** The method of a run stands beside its points. */
function runPath(path: Fact['path']): Fact['path'] {
  const points = path.indexOf('points');
  const last = path.at(-1);
  const run = points >= 0 ? path.slice(0, points) : last === 'average' || last === 'peak' ? path.slice(0, -1) : path;
  return [...run, 'method'];
}

function pointBy(point: MeasuredPoint, find: Find): MeasuredPoint {
  const methods = point.value.evidence === 'measured' ? find(point.method, point.subject, [...point.path, 'method']) : [];
  return methods.length === 0 ? point : { ...point, byMethod: methods, value: factBy(point.value, methods) };
}

function insulationBy(place: InsulationPlace, find: Find): InsulationPlace {
  const methods = find(place.method, 'insulation', [...place.path, 'method']);
  return {
    ...place,
    clearance: factBy(place.clearance, methods),
    creepage: factBy(place.creepage, methods),
    slot: factBy(place.slot, methods),
    thickness: factBy(place.thickness, methods),
  };
}

function logBy(log: LogFile, find: Find): LogFile {
  const methods = find(log.method, 'log', [...log.path, 'method']);
  return methods.length === 0 ? log : { ...log, byMethod: methods };
}

/** A value leads to the first method; the others stand beside it in words. */
function factBy<F extends Fact | null>(fact: F, [first]: readonly BenchLink[]): F {
  return fact === null || fact.evidence !== 'measured' || first === undefined ? fact : { ...fact, method: first.id };
}
