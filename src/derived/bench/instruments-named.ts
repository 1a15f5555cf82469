import type { Bench, Instrument } from '../../entry/bench.ts';
import type { BenchLink, Entry, Fact } from '../../entry/entry.ts';
import { didYouMean } from '../../entry/nearest-word.ts';

type DataPath = Fact['path'];

/** A name of an instrument that neither the bench nor the entry explains. */
export interface UnknownInstrument {
  readonly path: DataPath;
  readonly message: string;
}

/** Looks up what an entry calls its instruments, and keeps what nobody knows, each name once. */
export interface InstrumentFinder {
  /** The instruments of the bench that the words at a path name, in the order of the words; none where nothing is named. */
  readonly find: (named: string | null, path: DataPath) => readonly Instrument[];
  /** The same by the words of the entry, for links. */
  readonly links: (named: string | null) => readonly BenchLink[];
  readonly unknown: () => readonly UnknownInstrument[];
}

/** A finder for one entry: its own names go before those of the bench. */
export function instrumentFinder({ instruments: own }: Pick<Entry, 'instruments'>, { instruments }: Bench): InstrumentFinder {
  const unknown = new Map<string, UnknownInstrument>();
  const known = [...Object.keys(own), ...instruments.flatMap((each) => [each.id, each.name])];
  // What the entry says of its own name goes before an instrument of the bench that happens to be called the same.
  const called = (name: string): Instrument | undefined => {
    const sought = Object.hasOwn(own, name) ? (own[name] ?? name) : name;
    return instruments.find((each) => each.id === sought || each.name === sought);
  };
  const namesIn = (named: string | null): readonly string[] => {
    if (named === null) return [];
    return Object.hasOwn(own, named) ? [named] : instrumentPieces(named);
  };
  return {
    find(named, path) {
      for (const name of namesIn(named)) {
        if (called(name) !== undefined || Object.hasOwn(own, name) || known.length === 0 || unknown.has(name)) continue;
        const nearest = didYouMean(name, known);
        const message = `There is no instrument "${name}" on the bench or in this entry.${nearest === null ? '' : ` ${nearest}`}`;
        unknown.set(name, { path, message });
      }
      return namesIn(named).flatMap((name) => called(name) ?? []);
    },
    links: (named) =>
      namesIn(named).flatMap((name) => {
        const found = called(name);
        return found === undefined ? [] : [{ id: found.id, name }];
      }),
    unknown: () => [...unknown.values()],
  };
}

/** Instruments in words as an entry names them, split at commas and "and". */
export function instrumentPieces(named: string): readonly string[] {
  return named
    .split(/\s*,\s*|\s+and\s+/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
}
