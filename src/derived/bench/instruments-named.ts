import type { Bench, Instrument } from '../../entry/bench.ts';
import type { Entry, Fact } from '../../entry/entry.ts';
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
  readonly unknown: () => readonly UnknownInstrument[];
}

/** A finder for one entry: its own names go before those of the bench. */
export function instrumentFinder(entry: Pick<Entry, 'instruments'>, bench: Bench): InstrumentFinder {
  const unknown = new Map<string, UnknownInstrument>();
  return {
    find: (named, path) => (named === null ? [] : instrumentsNamed(named, path, entry, bench, unknown)),
    unknown: () => [...unknown.values()],
  };
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
  { instruments: own }: Pick<Entry, 'instruments'>,
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
