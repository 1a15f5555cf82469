import type { Discharged, Entry } from './entry.ts';
import { readFact, type ReadingContext } from './reading-context.ts';
import type { EntrySource } from './schema.ts';

/** Reads how the stored charge was taken out; a line alone is the method. */
export function readDischarged(context: ReadingContext, source: EntrySource['discharged']): Discharged | null {
  if (source === undefined) return null;
  if (typeof source === 'string') return { method: source, voltage: null };
  const voltage = readFact(context, { text: source.voltage, path: ['discharged', 'voltage'], evidence: 'measured' }, 'voltage');
  return { method: source.method, voltage };
}

/** Reads whether it was powered with its case open; naming who did it says that it was. */
export function readPoweredOpen(source: EntrySource['powered open']): Entry['poweredOpen'] {
  if (source === undefined) return null;
  if (typeof source === 'object') return { done: true, by: source.by };
  return { done: source === true || source === 'yes', by: null };
}

/** Reads whether a cell pack was opened; naming the state of charge says that it was. */
export function readCellsOpened(source: EntrySource['cells opened']): Entry['cellsOpened'] {
  if (source === undefined) return null;
  if (typeof source === 'object') return { done: true, chargeState: source['charge state'] };
  return { done: source === true || source === 'yes', chargeState: null };
}
