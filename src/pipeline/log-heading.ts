import { closeSync, openSync, readSync } from 'node:fs';
import { CsvError, parse } from 'csv-parse/sync';
import type { LogFile } from '../entry/entry.ts';
import { findHeading, type FoundHeading } from '../logs/find-heading.ts';

/** Where the rows of a file begin and how its cells are parted. */
export interface LogLayout {
  readonly heading: FoundHeading;
  readonly delimiter: string;
  /** Line of the first row behind the heading and its units, from 1. */
  readonly firstLine: number;
}

/** Why a file has no layout. */
export type LayoutFault = 'empty' | 'not UTF-8' | 'UTF-16';

const HEAD_BYTES = 65_536;
/** Loggers write up to some thirty lines about themselves before the heading. */
const HEAD_LINES = 60;
const DELIMITERS = [';', '\t', ',', '|'] as const;

/** Looks at the beginning of a file for its heading, in whichever of the usual separators has most of the heads that the entry names. */
export function logLayout(path: string, log: LogFile): LogLayout | LayoutFault {
  const bytes = beginning(path);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return 'UTF-16';
  const lines = linesOf(bytes);
  if (lines === null) return 'not UTF-8';
  if (lines.every((line) => line.trim() === '')) return 'empty';
  let best: LogLayout | null = null;
  for (const delimiter of DELIMITERS) {
    const heading = findHeading(
      lines.map((line) => cellsOf(line, delimiter)),
      log,
    );
    if (heading === null || (best !== null && !isBetter(heading, best.heading))) continue;
    best = { heading, delimiter, firstLine: heading.row + 2 + (heading.units === null ? 0 : 1) };
  }
  return best ?? 'empty';
}

function isBetter(one: FoundHeading, other: FoundHeading): boolean {
  return one.matches > other.matches || (one.matches === other.matches && one.heads.length > other.heads.length);
}

function beginning(path: string): Buffer {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(HEAD_BYTES);
    return bytes.subarray(0, readSync(file, bytes, 0, HEAD_BYTES, 0));
  } finally {
    closeSync(file);
  }
}

/** Null where they are no UTF-8. A character that the end of the bytes cuts in two is not held against them. */
function linesOf(bytes: Buffer): string[] | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: bytes.length === HEAD_BYTES });
    return text.split(/\r\n|\n|\r/).slice(0, HEAD_LINES);
  } catch {
    return null;
  }
}

function cellsOf(line: string, delimiter: string): string[] {
  if (!line.includes('"')) return line.split(delimiter);
  try {
    const rows: readonly (readonly unknown[])[] = parse(line, { delimiter, relax_quotes: true, relax_column_count: true });
    return (rows[0] ?? []).map(String);
  } catch (error) {
    // A quote that goes on in the next line is in no heading; the reader of the rows says where one is never closed.
    if (error instanceof CsvError) return line.split(delimiter);
    throw error;
  }
}
