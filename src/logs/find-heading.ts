import type { LogFile } from '../entry/entry.ts';
import type { LogHeading } from './log-columns.ts';
import { isUnitAlone } from './head-unit.ts';
import { LOG_QUANTITIES, TIME_WORDS } from './log-quantities.ts';

/** Where the heading of a file stands. */
export interface FoundHeading extends LogHeading {
  /** Row of the heading, from 0; rows before it are what loggers say about themselves. */
  readonly row: number;
  /** Heads that the entry names and this row has. */
  readonly matches: number;
}

/**
 * The row that has most of the heads that the entry names, the first such; the first row where none of them stands. A row of units below it
 * belongs to the heading.
 */
export function findHeading(rows: readonly (readonly string[])[], log: LogFile): FoundHeading | null {
  const isWanted = wantedHead(log);
  let best: FoundHeading | null = null;
  for (const [row, cells] of rows.entries()) {
    const matches = cells.filter((cell) => isWanted(cell.trim().toLowerCase())).length;
    const isBlank = cells.every((cell) => cell.trim() === '');
    if (isBlank || (best !== null && matches <= best.matches)) continue;
    best = { row, matches, heads: cells, units: unitsOf(rows[row + 1], cells.length) };
  }
  return best;
}

function wantedHead(log: LogFile): (cell: string) => boolean {
  const written = Object.values(log.columns).map((text) => text.trim().toLowerCase());
  if (written.length > 0) {
    const wanted = new Set(written.flatMap((text) => [text, text.replace(/\s+in\s+\S+$/, '')]));
    return (cell) => wanted.has(cell);
  }
  const words = [...TIME_WORDS, ...LOG_QUANTITIES.map(({ word }) => word)];
  return (cell) => words.some((word) => cell.startsWith(word));
}

function unitsOf(cells: readonly string[] | undefined, width: number): readonly string[] | null {
  if (cells?.length !== width) return null;
  const filled = cells.filter((cell) => cell.trim() !== '');
  return filled.length > 0 && filled.every(isUnitAlone) ? cells : null;
}
