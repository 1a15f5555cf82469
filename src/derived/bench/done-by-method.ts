import type { Bench } from '../../entry/bench.ts';
import type { BenchLink, EfficiencyPoint, Entry, Fact, InsulationPlace, LogFile, MeasuredPoint } from '../../entry/entry.ts';
import { factMaker, type FactMaker } from './fact-by-method.ts';
import { methodFinder, type MethodFinder, type UnknownMethod } from './methods-named.ts';
import { sectionsByMethod } from './sections-by-method.ts';

type Maker = FactMaker & Pick<MethodFinder, 'find'>;

/** The entry with the method of the bench beside everything that was measured by one, so that each such value leads to it. */
export function doneByMethod(entry: Entry, bench: Bench): { readonly entry: Entry; readonly unknown: readonly UnknownMethod[] } {
  if (bench.methods.length === 0) return { entry, unknown: [] };
  const { find, unknown } = methodFinder(bench);
  const maker: Maker = { find, ...factMaker(bench) };
  const done: Entry = {
    ...sectionsByMethod(entry, maker),
    insulation: entry.insulation.map((place) => insulationBy(place, maker)),
    efficiency: entry.efficiency.map((point) => efficiencyBy(point, maker)),
    measurements: entry.measurements.map((point) => pointBy(point, maker)),
    logs: entry.logs.map((log) => logBy(log, maker)),
  };
  return { entry: done, unknown: unknown() };
}

function efficiencyBy(point: EfficiencyPoint, { find, by }: Maker): EfficiencyPoint {
  const methods = find(point.method, 'efficiency', runPath(point.path));
  if (methods.length === 0) return point;
  return {
    ...point,
    byMethod: methods,
    measuredOutput: by(point.measuredOutput, methods),
    current: by(point.current, methods),
    input: by(point.input, methods),
    efficiency: by(point.efficiency, methods),
    loads: point.loads.map((load) => ({
      ...load,
      measuredOutput: by(load.measuredOutput, methods),
      current: by(load.current, methods),
      power: by(load.power, methods),
    })),
  };
}

/** The method of a run stands beside its points. */
function runPath(path: Fact['path']): Fact['path'] {
  const points = path.indexOf('points');
  const last = path.at(-1);
  const run = points >= 0 ? path.slice(0, points) : last === 'average' || last === 'peak' ? path.slice(0, -1) : path;
  return [...run, 'method'];
}

function pointBy(point: MeasuredPoint, { find, by }: Maker): MeasuredPoint {
  const methods = point.value.evidence === 'measured' ? find(point.method, point.subject, [...point.path, 'method']) : [];
  return methods.length === 0 ? point : { ...point, byMethod: methods, value: by(point.value, methods) };
}

function insulationBy(place: InsulationPlace, { find, by }: Maker): InsulationPlace {
  const methods: readonly BenchLink[] = find(place.method, 'insulation', [...place.path, 'method']);
  return {
    ...place,
    clearance: by(place.clearance, methods),
    creepage: by(place.creepage, methods),
    slot: by(place.slot, methods),
    thickness: by(place.thickness, methods),
    workingVoltage: by(place.workingVoltage, methods),
    withstand: by(place.withstand, methods),
  };
}

function logBy(log: LogFile, { find }: Maker): LogFile {
  const methods = find(log.method, 'log', [...log.path, 'method']);
  return methods.length === 0 ? log : { ...log, byMethod: methods };
}
