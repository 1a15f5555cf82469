import { roleOf } from '../../roles/index.ts';
import type { CorpusSheet } from '../corpus-sheet.ts';
import { partKind } from './likeness-tokens.ts';

/** Shares of equal values from which two boards count as one design (our own choice, common practice). */
const LEAST_EQUAL_VALUES = 0.7;

/** Differences that are listed; two boards of one design have few. */
const MOST_DIFFERENCES = 12;

/** Fewer known values than this prove nothing. */
const LEAST_VALUES = 4;

/**
 * Whether two sheets are one platform by strong evidence: the same chain of stages, the same controllers, the same converter switches, and
 * at least seven in ten of the values known on both. Null where that is not given; else what differs all the same. The same from either
 * side but for the order of words in a difference.
 */
export function samePlatform(one: CorpusSheet, other: CorpusSheet): { readonly differs: readonly string[] } | null {
  const controllers = numbersOf(one, 'controller');
  if (controllers.length === 0 || !sameTexts(controllers, numbersOf(other, 'controller'))) return null;
  if (!sameTexts(numbersOf(one, 'switch'), numbersOf(other, 'switch'))) return null;
  if (!sameTexts(one.glyphs, other.glyphs)) return null;
  const values = compareValues(one, other);
  if (values.compared < LEAST_VALUES || values.equal / values.compared < LEAST_EQUAL_VALUES) return null;
  return { differs: [...labelDifferences(one, other), ...values.differs, ...numberDifferences(one, other)].slice(0, MOST_DIFFERENCES) };
}

function numbersOf(sheet: CorpusSheet, kind: 'controller' | 'switch'): readonly string[] {
  return [...new Set(sheet.parts.filter((part) => partKind(part) === kind).map((part) => part.number))].sort();
}

function sameTexts(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((text, index) => text === other[index]);
}

/** Kinds of value that both sheets state, how many of them are equal, and those that are not: "output capacitor 330 µF, there 470 µF". */
function compareValues(
  one: CorpusSheet,
  other: CorpusSheet,
): { readonly compared: number; readonly equal: number; readonly differs: readonly string[] } {
  const here = valuesByKind(one);
  const there = valuesByKind(other);
  const both = [...here].flatMap(([kind, words]) => {
    const theirs = there.get(kind);
    return theirs === undefined ? [] : [{ kind, words, theirs }];
  });
  const unequal = both.filter(({ words, theirs }) => !sameTexts(words, theirs));
  return { compared: both.length, equal: both.length - unequal.length, differs: unequal.map(differenceWords) };
}

function valuesByKind(sheet: CorpusSheet): ReadonlyMap<string, readonly string[]> {
  const kinds = new Map<string, string[]>();
  for (const { kind, words } of sheet.traits.values) kinds.set(kind, [...(kinds.get(kind) ?? []), words]);
  return kinds;
}

function differenceWords({
  kind,
  words,
  theirs,
}: {
  readonly kind: string;
  readonly words: readonly string[];
  readonly theirs: readonly string[];
}): string {
  const only = (some: readonly string[], others: readonly string[]): string =>
    some.filter((word) => !others.includes(word)).join(' + ') || 'none of it';
  return `${kind.replaceAll('-', ' ')} ${only(words, theirs)}, there ${only(theirs, words)}`;
}

function labelDifferences(one: CorpusSheet, other: CorpusSheet): readonly string[] {
  const size = (sheet: CorpusSheet): string | null => sheet.outline?.map(String).join(' × ') ?? null;
  const [here, there] = [size(one), size(other)];
  return [
    ...(one.maker === other.maker ? [] : [`label ${one.maker}, there ${other.maker}`]),
    ...(here === null || there === null || here === there ? [] : [`size ${here} mm, there ${there} mm`]),
    ...(one.ratedWatts === other.ratedWatts || one.ratedWatts === null || other.ratedWatts === null
      ? []
      : [`rated ${String(one.ratedWatts)} W, there ${String(other.ratedWatts)} W`]),
  ];
}

/** Parts of one role with other numbers: "bulk capacitor HMR-KX-100-420, there HMR-KX-100-450". */
function numberDifferences(one: CorpusSheet, other: CorpusSheet): readonly string[] {
  const here = numbersByRole(one);
  const there = numbersByRole(other);
  return [...here].flatMap(([role, numbers]) => {
    const theirs = there.get(role);
    if (theirs === undefined || sameTexts(numbers, theirs)) return [];
    return [differenceWords({ kind: roleOf(role)?.name ?? role, words: numbers, theirs })];
  });
}

function numbersByRole(sheet: CorpusSheet): ReadonlyMap<string, readonly string[]> {
  const roles = new Map<string, Set<string>>();
  for (const { role, number } of sheet.parts) roles.set(role, (roles.get(role) ?? new Set<string>()).add(number));
  return new Map([...roles].map(([role, numbers]) => [role, [...numbers].sort()]));
}
