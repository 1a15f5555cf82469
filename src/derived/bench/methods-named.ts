import type { Bench, BenchMethod } from '../../entry/bench.ts';
import type { BenchSubject } from '../../entry/bench-subjects.ts';
import type { Fact, BenchLink } from '../../entry/entry.ts';
import { didYouMean } from '../../entry/nearest-word.ts';

type DataPath = Fact['path'];

/** Words for a method that are nearly those of the bench page. */
export interface UnknownMethod {
  readonly path: DataPath;
  readonly message: string;
}

/** Looks up the methods of the bench by what an entry calls them, and keeps what is nearly one. */
export interface MethodFinder {
  /**
   * Methods that the words name, several of them parted by semicolons; where an entry says nothing, the method that is always used for
   * the subject. Words that name none are the author's own and stand as they are.
   */
  readonly find: (named: string | null, subject: BenchSubject, path: DataPath) => readonly BenchLink[];
  readonly unknown: () => readonly UnknownMethod[];
}

export function methodFinder({ methods }: Bench): MethodFinder {
  const unknown = new Map<string, UnknownMethod>();
  const used = ({ id, name }: BenchMethod): BenchLink => ({ id, name });
  return {
    find(named, subject, path) {
      if (named === null) return methods.filter(({ of }) => of.includes(subject)).map(used);
      return piecesOf(named).flatMap((piece) => {
        const found = methods.find(({ name }) => isSame(name, piece));
        if (found !== undefined) return [used(found)];
        const nearest = didYouMean(
          piece,
          methods.map(({ name }) => name),
        );
        if (nearest !== null && !unknown.has(piece))
          unknown.set(piece, { path, message: `There is no method "${piece}" on the bench. ${nearest}` });
        return [];
      });
    },
    unknown: () => [...unknown.values()],
  };
}

/** The words of a method, part by part, in the order written. */
export function piecesOf(named: string): readonly string[] {
  return named
    .split(';')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
}

/** Whether words call a method: capitals do not matter. */
export function isSame(name: string, words: string): boolean {
  return name.toLowerCase() === words.toLowerCase();
}
