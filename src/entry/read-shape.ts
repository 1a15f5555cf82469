import type { DataPath, Finding } from '../diagnostics/finding.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import { ENTRY_SCHEMA, type EntrySource } from './schema.ts';
import { type ShapeFault, shapeFaults } from './shape-findings.ts';

/** As often as something may be removed before the rest is given up; each round goes one level up at least. */
const ROUNDS = 12;

/** Data in the shape of the format, with everything left out that did not fit; and what did not fit. */
export interface ReadShape {
  readonly source: EntrySource | null;
  readonly findings: readonly Finding[];
  /** Items that were taken out of lists, by the list's path, so that what is left can be found at its own place. */
  readonly gaps: ListGaps;
}

/** Original indexes that are no longer in a list, ascending, by `gapKey` of the list's path. */
export type ListGaps = ReadonlyMap<string, readonly number[]>;

/** Key under which the gaps of a list stand. */
export function gapKey(path: DataPath): string {
  return JSON.stringify(path);
}

/** Brings data into the shape of the format. All faults are reported; what has none of them is kept. */
export function readShape(frontmatter: unknown, slug: string): ReadShape {
  if (!isGroup(frontmatter)) return { source: null, findings: [notAGroup(frontmatter)], gaps: new Map() };
  const blanks = blanksIn(frontmatter, []);
  const first = ENTRY_SCHEMA.safeParse(frontmatter);
  if (first.success && blanks.length === 0) return { source: first.data, findings: [], gaps: new Map() };
  const faults = [...blanks, ...otherThan(blanks, first.success ? [] : shapeFaults(first.error.issues, frontmatter))];
  const findings = faults.map(({ finding }) => finding);
  const rest = copyOf(frontmatter);
  const gaps = new Map<string, readonly number[]>();
  removeAll(rest, faults, gaps);
  return { source: whatFits(rest, slug, gaps), findings, gaps };
}

/** Texts that still hold a marked blank of the template. */
function blanksIn(data: unknown, path: DataPath): readonly ShapeFault[] {
  if (typeof data === 'string') {
    const blank = /‹[^›]*›/u.exec(data);
    if (blank === null) return [];
    const span = { start: blank.index, end: blank.index + blank[0].length };
    return [{ finding: readingFinding('blank-left', atValue(path, span), `The blank ${blank[0]} is not filled in.`), remove: path }];
  }
  if (Array.isArray(data)) return data.flatMap((item, index) => blanksIn(item, [...path, index]));
  if (isGroup(data)) return Object.entries(data).flatMap(([key, value]) => blanksIn(value, [...path, key]));
  return [];
}

/** A blank is said once, and not again as a word that its field does not take. */
function otherThan(blanks: readonly ShapeFault[], faults: readonly ShapeFault[]): readonly ShapeFault[] {
  const known = new Set(blanks.map(({ remove }) => gapKey(remove)));
  return faults.filter(({ remove }) => !known.has(gapKey(remove)));
}

/** Deeper and later places go first, so that the paths of the others stay true. */
function removeAll(data: unknown, faults: readonly ShapeFault[], gaps: Map<string, readonly number[]>): void {
  const paths = [...new Map(faults.map(({ remove }) => [gapKey(remove), remove])).values()];
  const later = (a: DataPath, b: DataPath): number => {
    const differ = a.findIndex((segment, index) => segment !== b[index]);
    const [one, other] = differ === -1 ? [undefined, undefined] : [a[differ], b[differ]];
    if (typeof one === 'number' && typeof other === 'number') return other - one;
    return b.length - a.length;
  };
  for (const path of paths.sort(later)) removeAt(data, path, gaps);
}

function whatFits(data: Record<string, unknown>, slug: string, gaps: Map<string, readonly number[]>): EntrySource | null {
  for (let round = 0; round < ROUNDS; round += 1) {
    if (typeof data['title'] !== 'string' || data['title'] === '') data['title'] = slug;
    if (!isGroup(data['device'])) data['device'] = {};
    completeDevice(data['device']);
    const parsed = ENTRY_SCHEMA.safeParse(data);
    if (parsed.success) return parsed.data;
    removeAll(data, shapeFaults(parsed.error.issues, data), gaps);
  }
  return null;
}

/** Stand-ins that keep a broken entry readable; what is missing has been reported. */
function completeDevice(device: unknown): void {
  if (!isGroup(device)) return;
  if (typeof device['maker'] !== 'string' || device['maker'] === '') device['maker'] = 'not given';
  if (typeof device['kind'] !== 'string') device['kind'] = 'wall charger';
}

function notAGroup(frontmatter: unknown): Finding {
  const blank = frontmatter === null || frontmatter === undefined;
  return blank
    ? readingFinding('empty-entry', { in: 'file', line: 1, column: 1 }, 'There is nothing between the two lines of dashes.')
    : readingFinding('wrong-shape', atValue([]), 'The data should be a group of keys.');
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A copy that may be cut; numbers, texts and truth values are kept as they are. */
function copyOf<T>(value: T): T;
function copyOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((item) => copyOf<unknown>(item));
  if (isGroup(value)) return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, copyOf(item)]));
  return value;
}

/** Takes out what stands at a path; the index that a list loses is remembered. */
function removeAt(data: unknown, path: DataPath, gaps: Map<string, readonly number[]>): void {
  const last = path.at(-1);
  if (last === undefined) return;
  let holder = data;
  for (const segment of path.slice(0, -1)) {
    if (typeof holder !== 'object' || holder === null || !Object.hasOwn(holder, segment)) return;
    holder = Reflect.get(holder, segment);
  }
  if (Array.isArray(holder) && typeof last === 'number') {
    const key = gapKey(path.slice(0, -1));
    const gone = gaps.get(key) ?? [];
    gaps.set(
      key,
      [...gone, originalIndex(gone, last)].sort((a, b) => a - b),
    );
    holder.splice(last, 1);
  } else if (typeof holder === 'object' && holder !== null) Reflect.deleteProperty(holder, last);
}

/** Index that an item had before others were taken out of its list. */
export function originalIndex(gone: readonly number[], index: number): number {
  let original = index;
  for (const gap of gone) if (gap <= original) original += 1;
  return original;
}
