import type { Instrument } from '../../entry/bench.ts';
import type { LogFile } from '../../entry/entry.ts';
import type { InstrumentFinder } from './instruments-named.ts';

/** The instruments that a log was written by, for any of its columns; one named for the whole log counts for each. */
export interface InstrumentsOfLog {
  readonly of: (quantity: string) => readonly Instrument[];
}

/** Looks up every name that a log gives. */
export function instrumentsOfLog({ instrument, path }: LogFile, find: InstrumentFinder['find']): InstrumentsOfLog {
  const at = [...path, 'instrument'];
  if (instrument === null || typeof instrument === 'string') {
    const all = find(instrument, at);
    return { of: () => all };
  }
  const byQuantity = new Map(Object.entries(instrument).map(([quantity, named]) => [quantity, find(named, [...at, quantity])] as const));
  return { of: (quantity) => byQuantity.get(quantity) ?? [] };
}
