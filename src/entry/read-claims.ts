import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { Claim } from './entry.ts';
import { listed, type ReadingContext } from './reading-context.ts';
import type { EntrySource } from './schema.ts';

/** Dimensions that a claim may have, tried in this order; a claim that is words only has none. */
const DIMENSIONS: readonly Dimension[] = [
  'ratio',
  'power',
  'power density',
  'specific power',
  'voltage',
  'current',
  'length',
  'volume',
  'mass',
  'temperature',
  'time',
  'frequency',
  'energy',
  'charge',
  'capacitance',
  'inductance',
  'resistance',
];

/** Reads what the maker or a document states; a claim that is no single quantity keeps its words. */
export function readClaims(context: ReadingContext, source: EntrySource['claims']): readonly Claim[] {
  return listed(context, source, ['claims']).map(({ item, path }) => ({
    of: item.of,
    written: item.value,
    quantity: quantityOf(item.value),
    basis: item.basis ?? null,
    line: item.line ?? null,
    output: item.output ?? null,
    load: item.load ?? null,
    port: item.port ?? null,
    where: item.where ?? null,
    note: item.note ?? null,
    path,
  }));
}

function quantityOf(text: string): Quantity | null {
  for (const dimension of DIMENSIONS) {
    const reading = readQuantity(text, dimension);
    if (reading.ok) return reading.value;
  }
  return null;
}
