import { z } from 'zod';
import type { BenchMethod } from '../entry/bench.ts';
import { BENCH_SUBJECTS, isBenchSubject, type BenchSubject } from '../entry/bench-subjects.ts';
import { didYouMean } from '../markdown/nearest-name.ts';

type Path = readonly PropertyKey[];
type Say = (path: Path, message: string, at?: 'key' | 'value') => void;

const TEXT = z.string({ error: 'must be a text' }).trim().min(1, 'must not be empty');

/** A method by its name: how it is done, and what is always done that way here. */
export const METHOD_SCHEMA = z.union(
  [
    TEXT,
    z.strictObject({
      how: TEXT.describe('How it is done.'),
      for: z
        .union([TEXT, z.array(TEXT)])
        .optional()
        .describe('What is always done this way: ripple, or [standby, efficiency].'),
      with: z
        .union([TEXT, z.array(TEXT)])
        .optional()
        .describe('Instruments of the bench that it is done with: calipers, or [scope, bench-load].'),
    }),
  ],
  { error: 'must be a text, or "how" with "for" and "with"' },
);

/** The methods of a bench file; what is not sound was said with the schema and is left out. */
export function benchMethods(
  stated: readonly (readonly [string, unknown])[],
  instruments: readonly string[],
  say: Say,
): readonly BenchMethod[] {
  const taken = new Set<string>();
  return stated.flatMap(([name, fields]) => {
    const found = METHOD_SCHEMA.safeParse(fields).data;
    if (found === undefined) return [];
    const { how, for: subjects = [], with: named = [] } = typeof found === 'string' ? { how: found } : found;
    const words = listOf(subjects);
    const id = anchorOf(name);
    if (taken.has(id)) {
      say(['methods', name], `"${name}" reads like the name of another method: both would have one address on the page`, 'key');
      return [];
    }
    taken.add(id);
    // A method that is called like what it measures is the method for it.
    const own = isBenchSubject(name.toLowerCase()) ? [name.toLowerCase()] : [];
    const of = [...own, ...words].flatMap((word) => subjectNamed(word, name, say));
    return [{ id, name, how, with: listOf(named).flatMap((each) => instrumentNamed(each, instruments, name, say)), of }];
  });
}

function listOf(words: string | readonly string[]): readonly string[] {
  return typeof words === 'string' ? [words] : words;
}

function instrumentNamed(word: string, instruments: readonly string[], name: string, say: Say): readonly string[] {
  if (instruments.includes(word)) return [word];
  say(['methods', name, 'with'], `There is no instrument "${word}" on the bench${didYouMean(word, instruments)}`);
  return [];
}

function subjectNamed(word: string, name: string, say: Say): readonly BenchSubject[] {
  if (isBenchSubject(word)) return [word];
  say(['methods', name, 'for'], `"${word}" is not something that is measured${didYouMean(word, BENCH_SUBJECTS)}`);
  return [];
}

/** "Ripple and noise" → "method-ripple-and-noise". */
function anchorOf(name: string): string {
  const words = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/gu, '');
  return `method-${words}`;
}
