import type { LogFile } from '../entry/entry.ts';
import { didYouMean } from '../entry/nearest-word.ts';
import { unitBySymbol } from '../units/display-units.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Unit } from '../units/unit.ts';
import { unitInHead, unitSpelt } from './head-unit.ts';
import { LOG_QUANTITIES, logQuantity, TIME_WORDS } from './log-quantities.ts';
import type { LogFault } from './log-rule.ts';
import { timeWriting, type TimeWriting } from './time-base.ts';

/** A column of numbers. */
export interface NumberColumn {
  readonly quantity: string;
  readonly dimension: Dimension;
  readonly head: string;
  /** Place in the row, from 0. */
  readonly index: number;
  /** Unit of numbers that stand without one. */
  readonly unit: Unit;
  /** Whether head or author say the unit; where nobody does, the cells may. */
  readonly isUnitSaid: boolean;
}

/** Which columns of a file are read, and as what. */
export interface LogColumns {
  readonly heads: readonly string[];
  readonly time: { readonly index: number; readonly head: string; readonly said: TimeWriting; readonly dateIndex: number | null };
  readonly numbers: readonly NumberColumn[];
}

/** A heading as found in the file. */
export interface LogHeading {
  readonly heads: readonly string[];
  /** Units of a second heading row, in the order of the heads; null where there is none. */
  readonly units: readonly string[] | null;
}

/** Finds the columns that the entry names in the heading of the file; null with faults where there is no time or nothing to read. */
export function logColumns(
  log: LogFile,
  heading: LogHeading,
): { readonly columns: LogColumns | null; readonly faults: readonly LogFault[] } {
  const faults: LogFault[] = [];
  const heads = withoutIdleEnd(heading.heads.map((head) => head.trim()));
  const named = Object.keys(log.columns).length === 0 ? columnsByOwnName(heads) : log.columns;
  const find = (word: string): FoundColumn | null => {
    const written = named[word];
    const found = written === undefined ? null : findColumn(written, heads);
    if (found === null || found.ok) return found?.column ?? null;
    faults.push({ rule: 'log-column', message: found.message, at: { in: 'entry', path: [...log.path, 'columns', word], part: 'value' } });
    return null;
  };
  const numbers = Object.keys(named).flatMap((word) => {
    if (isTimeWord(word)) return [];
    const quantity = logQuantity(word);
    if (quantity === null) {
      faults.push(unknownWord(word, log));
      return [];
    }
    const found = find(word);
    return found === null ? [] : numberColumn(quantity, found, heading.units?.[found.index] ?? null, log, faults);
  });
  const time = find('time');
  const dateIndex = find('date')?.index ?? null;
  if (time === null && named['time'] === undefined) faults.push(noTime(log, heads));
  if (numbers.length === 0 && faults.length === 0) faults.push(nothingNamed(log, heads));
  if (time === null || numbers.length === 0) return { columns: null, faults };
  const said = writingOf(time, heading.units?.[time.index] ?? null, log, faults);
  return { columns: { heads, time: { ...time, said, dateIndex }, numbers }, faults };
}

interface FoundColumn {
  readonly index: number;
  readonly head: string;
  /** Unit or writing that the author puts behind the head: "Ch2 in mA". */
  readonly said: string | null;
}

type Found = { readonly ok: true; readonly column: FoundColumn } | { readonly ok: false; readonly message: string };

/** The column of this head, or of the head before " in ". */
function findColumn(written: string, heads: readonly string[]): Found {
  const wanted = written.trim();
  const inUnit = /^(.*\S)\s+in\s+(\S+)$/.exec(wanted);
  const whole = indexesOf(wanted, heads);
  const [name, said] = whole.length > 0 || inUnit === null ? [wanted, null] : [inUnit[1] ?? '', inUnit[2] ?? ''];
  const at = whole.length > 0 ? whole : indexesOf(name, heads);
  const [index] = at;
  if (index === undefined) {
    const nearest = didYouMean(name, heads);
    const known = heads.length === 0 ? '' : `; it has ${heads.map((head) => `"${head}"`).join(', ')}`;
    return { ok: false, message: `The file has no column "${name}"${known}${nearest === null ? '' : `. ${nearest}`}` };
  }
  if (at.length > 1) return { ok: false, message: `The file has ${at.length} columns "${name}": name each one differently in the file` };
  return { ok: true, column: { index, head: heads[index] ?? name, said } };
}

/** Columns of this head as written; where there are none, of this head in any case. */
function indexesOf(name: string, heads: readonly string[]): readonly number[] {
  const matching = (isSame: (head: string) => boolean): number[] => heads.flatMap((head, index) => (isSame(head) ? [index] : []));
  const exact = matching((head) => head === name);
  return exact.length > 0 ? exact : matching((head) => head.toLowerCase() === name.toLowerCase());
}

function numberColumn(
  quantity: { readonly word: string; readonly dimension: Dimension; readonly unit: string },
  { index, head, said }: FoundColumn,
  below: string | null,
  log: LogFile,
  faults: LogFault[],
): readonly NumberColumn[] {
  const { word, dimension } = quantity;
  const unit =
    said === null ? (unitInHead(head, dimension) ?? (below === null ? null : unitInHead(below, dimension))) : unitSpelt(said, dimension);
  if (said !== null && unit === null) {
    const message = `"${said}" is no unit of ${dimension}`;
    faults.push({ rule: 'log-unit', message, at: { in: 'entry', path: [...log.path, 'columns', word], part: 'value' } });
    return [];
  }
  const usual = unitBySymbol(quantity.unit, dimension);
  const chosen = unit ?? usual;
  return chosen === null ? [] : [{ quantity: word, dimension, head, index, unit: chosen, isUnitSaid: unit !== null }];
}

function writingOf({ head, said }: FoundColumn, below: string | null, log: LogFile, faults: LogFault[]): TimeWriting {
  if (said === null) {
    const unit = unitInHead(head, 'time') ?? (below === null ? null : unitInHead(below, 'time'));
    return timeWriting(unit?.symbol ?? '') ?? { scale: null, parts: null, order: null };
  }
  const writing = timeWriting(said);
  if (writing !== null) return writing;
  const message = `"${said}" is no way in which a time is written: s, ms, min, h, h:m:s, m:s, h:m, d/m/y, m/d/y`;
  faults.push({ rule: 'log-unit', message, at: { in: 'entry', path: [...log.path, 'columns', 'time'], part: 'value' } });
  return { scale: null, parts: null, order: null };
}

/** Heads that are our own words, with or without a unit: "Time (s)", "voltage", "Current_mA". */
function columnsByOwnName(heads: readonly string[]): Readonly<Record<string, string>> {
  const words: readonly string[] = [...TIME_WORDS, ...LOG_QUANTITIES.map(({ word }) => word)];
  return Object.fromEntries(
    heads.flatMap((head) => {
      const bare = head
        .toLowerCase()
        .replace(/[([{/_,;:].*$/, '')
        .trim();
      return words.includes(bare) ? [[bare, head] as const] : [];
    }),
  );
}

/** Heads without empty ones at the end, which a separator at the end of the line makes. */
function withoutIdleEnd(heads: readonly string[]): readonly string[] {
  return heads.slice(0, heads.findLastIndex((head) => head !== '') + 1);
}

function isTimeWord(word: string): boolean {
  return TIME_WORDS.some((each) => each === word);
}

function unknownWord(word: string, log: LogFile): LogFault {
  const nearest = didYouMean(word, [...TIME_WORDS, ...LOG_QUANTITIES.map((quantity) => quantity.word)]);
  const message = `"${word}" is not what a column of a log can be${nearest === null ? '' : `. ${nearest}`}`;
  return { rule: 'log-quantity', message, at: { in: 'entry', path: [...log.path, 'columns', word], part: 'key' } };
}

function noTime(log: LogFile, heads: readonly string[]): LogFault {
  const message = `No column is named as the time; the file has ${heads.map((head) => `"${head}"`).join(', ')}`;
  return { rule: 'log-column', message, at: { in: 'entry', path: log.path, part: 'key' } };
}

function nothingNamed(log: LogFile, heads: readonly string[]): LogFault {
  const message = `No column but the time is named; the file has ${heads.map((head) => `"${head}"`).join(', ')}`;
  return { rule: 'log-column', message, at: { in: 'entry', path: log.path, part: 'key' } };
}
