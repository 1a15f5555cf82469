import { readQuantity } from '../units/read-quantity.ts';

/** Volts of a line as written: "230 V 50 Hz" is 230; null where nothing readable is written. */
export function lineVolts(line: string | undefined): number | null {
  const read = readQuantity((line ?? '').replace(/[\s,/]+\d+(?:[.,]\d+)?\s*Hz\b.*$/iu, ''), 'voltage');
  return read.ok ? read.value.nominal : null;
}
