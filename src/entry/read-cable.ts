import type { DataPath } from '../diagnostics/finding.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { CableUsed } from './entry-measurements.ts';

/** Picks length and gauge out of the words on a cable; the words stay as they are. */
export function readCable(text: string | undefined, path: DataPath): CableUsed | null {
  if (text === undefined) return null;
  const length = /\d+(?:[.,]\d+)?\s*(?:cm|mm|m)\b/u.exec(text)?.[0];
  const reading = length === undefined ? null : readQuantity(length, 'length');
  const gauge = /\bAWG\s*#?(\d{1,2})\b|\b(\d{1,2})\s*AWG\b/iu.exec(text);
  return {
    written: text,
    length: reading?.ok === true && reading.value.nominal > 0 ? reading.value : null,
    gauge: gauge === null ? null : Number(gauge[1] ?? gauge[2]),
    path,
  };
}
