import { didYouMean } from '../../entry/nearest-word.ts';
import type { Accuracy, Bench, Instrument } from '../../entry/bench.ts';
import type { EfficiencyPoint, Entry, Fact, MeasuredPoint } from '../../entry/entry.ts';
import { instrumentUncertainty } from '../../formulas/measurement/instrument-uncertainty.ts';
import type { Quantity } from '../../units/quantity.ts';

type DataPath = Fact['path'];

/** A name of an instrument that neither the bench nor the entry explains. */
export interface UnknownInstrument {
  readonly path: DataPath;
  readonly message: string;
}

type Finder = (named: string | null, path: DataPath) => readonly Instrument[];

/**
 * The entry with the accuracy of its instruments beside each measured fact. A point may name several ("meter, load"): the first that
 * states an accuracy for the quantity counts. Everything computed from the facts gets its interval from here.
 */
export function readOnBench(entry: Entry, bench: Bench): { readonly entry: Entry; readonly unknown: readonly UnknownInstrument[] } {
  const unknown = new Map<string, UnknownInstrument>();
  const find: Finder = (named, path) => (named === null ? [] : instrumentsNamed(named, path, entry, bench, unknown));
  const efficiency = entry.efficiency.map((point) => efficiencyOn(point, find(point.instrument, instrumentPath(point.path))));
  const measurements = entry.measurements.map((point) => measuredOn(point, find(point.instrument, [...point.path, 'instrument'])));
  return { entry: { ...entry, efficiency, measurements }, unknown: [...unknown.values()] };
}

/** Instruments in words as an entry names them, split at commas and "and". */
function namesOf(named: string): readonly string[] {
  return named
    .split(/\s*,\s*|\s+and\s+/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
}

function instrumentsNamed(
  named: string,
  path: DataPath,
  { instruments: own }: Entry,
  { instruments }: Bench,
  unknown: Map<string, UnknownInstrument>,
): readonly Instrument[] {
  const names = Object.hasOwn(own, named) ? [named] : namesOf(named);
  return names.flatMap((name) => {
    const isOwn = Object.hasOwn(own, name);
    // What the entry says of its own name goes before an instrument of the bench that happens to be called the same.
    const sought = isOwn ? (own[name] ?? name) : name;
    const found = instruments.find((each) => each.id === sought || each.name === sought);
    const known = [...Object.keys(own), ...instruments.flatMap((each) => [each.id, each.name])];
    if (found === undefined && !isOwn && known.length > 0 && !unknown.has(name)) {
      const nearest = didYouMean(name, known);
      const message = `There is no instrument "${name}" on the bench or in this entry.${nearest === null ? '' : ` ${nearest}`}`;
      unknown.set(name, { path, message });
    }
    return found === undefined ? [] : [found];
  });
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
    measuredOutput: factOn(point.measuredOutput, instruments),
    current: factOn(point.current, instruments),
    input: factOn(point.input, instruments),
    efficiency: factOn(point.efficiency, instruments),
  };
}

function measuredOn(point: MeasuredPoint, instruments: readonly Instrument[]): MeasuredPoint {
  return instruments.length === 0 ? point : { ...point, value: factOn(point.value, instruments) };
}

function factOn<F extends Fact | null>(fact: F, instruments: readonly Instrument[]): F {
  if (fact === null || fact.evidence !== 'measured') return fact;
  const { quantity } = fact;
  for (const instrument of instruments) {
    const accuracy = instrument.accuracies.find((each) => each.quantity === quantity.dimension);
    if (accuracy !== undefined) return { ...fact, readOn: { instrument: instrument.id, within: uncertaintyOf(quantity, accuracy) } };
  }
  const [only] = instruments;
  // Of several instruments without a word on the quantity nobody can say which one it was.
  return only === undefined || instruments.length > 1 ? fact : { ...fact, readOn: { instrument: only.id, within: null } };
}

/** Greatest distance of the true value from a reading, in the SI unit of the quantity. */
function uncertaintyOf({ nominal, resolution }: Quantity, accuracy: Accuracy): number {
  const { ofReading, ofRange, range, counts, fixed } = accuracy;
  const lastPlace = accuracy.resolution ?? resolution;
  return fixed + instrumentUncertainty.compute({ reading: nominal, ofReading, range: range ?? 0, ofRange, counts, resolution: lastPlace });
}
