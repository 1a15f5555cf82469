import type { Bench, Instrument } from '../../entry/bench.ts';
import type { BenchLink, EfficiencyPoint, Entry, Fact, MeasuredPoint, PortLoad } from '../../entry/entry.ts';
import { factOn } from './fact-on-instruments.ts';
import { instrumentFinder, type UnknownInstrument } from './instruments-named.ts';
import { instrumentsOfLog } from './instruments-of-log.ts';

type DataPath = Fact['path'];

/**
 * The entry with the accuracy of its instruments beside each measured fact. A point may name several ("meter, load"): the first that
 * states an accuracy for the quantity counts. Everything computed from the facts gets its interval from here.
 */
export function readOnBench(entry: Entry, bench: Bench): { readonly entry: Entry; readonly unknown: readonly UnknownInstrument[] } {
  const { find, links, unknown } = instrumentFinder(entry, bench);
  const linked = <P extends { readonly instrument: string | null }>(point: P): P & { readonly byInstrument?: readonly BenchLink[] } => {
    const byInstrument = links(point.instrument);
    return byInstrument.length === 0 ? point : { ...point, byInstrument };
  };
  const efficiency = entry.efficiency.map((point) => linked(efficiencyOn(point, find(point.instrument, instrumentPath(point.path)))));
  const measurements = entry.measurements.map((point) => linked(measuredOn(point, find(point.instrument, [...point.path, 'instrument']))));
  // What a log is worth is told with its rows; here its names become links, and those that nobody knows come to light.
  const logs = entry.logs.map((log) => {
    instrumentsOfLog(log, find);
    const named = log.instrument === null || typeof log.instrument === 'string' ? [log.instrument] : Object.values(log.instrument);
    const byInstrument = [...new Map(named.flatMap(links).map((link) => [link.id, link])).values()];
    return byInstrument.length === 0 ? log : { ...log, byInstrument };
  });
  return { entry: { ...entry, efficiency, measurements, logs }, unknown: unknown() };
}

/** The instrument of a run stands beside its points. */
function instrumentPath(path: DataPath): DataPath {
  const points = path.indexOf('points');
  const last = path.at(-1);
  const run = points >= 0 ? path.slice(0, points) : last === 'average' || last === 'peak' ? path.slice(0, -1) : path;
  return [...run, 'instrument'];
}

function efficiencyOn(point: EfficiencyPoint, instruments: readonly Instrument[]): EfficiencyPoint {
  if (instruments.length === 0) return point;
  return {
    ...point,
    loads: point.loads.map((load) => loadOn(load, instruments)),
    // A load in watts is what came out, so it is read; one in per cent or ohms only says what was set.
    load: point.load?.quantity.dimension === 'power' ? factOn(point.load, instruments) : point.load,
    measuredOutput: factOn(point.measuredOutput, instruments),
    current: factOn(point.current, instruments),
    input: factOn(point.input, instruments),
    efficiency: factOn(point.efficiency, instruments),
  };
}

function loadOn(load: PortLoad, instruments: readonly Instrument[]): PortLoad {
  const { measuredOutput, current, power } = load;
  return {
    ...load,
    measuredOutput: factOn(measuredOutput, instruments),
    current: factOn(current, instruments),
    power: factOn(power, instruments),
  };
}

function measuredOn(point: MeasuredPoint, instruments: readonly Instrument[]): MeasuredPoint {
  return instruments.length === 0 ? point : { ...point, value: factOn(point.value, instruments) };
}
