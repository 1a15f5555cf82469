import { valueOfDigitCode } from './digit-code.ts';
import { valueOfEia96Code } from './eia-96-code.ts';
import { readRkmCode } from './rkm-code.ts';
import { inSiUnit } from './unit.ts';

/** Resistance in ohms of what is marked on a resistor: 103, 4990, 4R7, R010, 39D. Null where it is no such marking. */
export function valueOfResistorCode(code: string): number | null {
  const letterCode = readRkmCode(code, 0, 'resistance');
  if (letterCode !== null && letterCode.end === code.length) return inSiUnit(letterCode.digits, 0, letterCode.unit);
  return valueOfDigitCode(code) ?? valueOfEia96Code(code) ?? valueOfEndingLetter(code);
}

/** "470R", "47K": the letter closes the number, as IEC 60062 writes whole values. */
function valueOfEndingLetter(code: string): number | null {
  const match = /^(\d{1,3})([RKM])$/i.exec(code);
  if (match === null) return null;
  const letter = match[2] ?? '';
  const exponent = letter === 'M' ? 6 : letter.toUpperCase() === 'K' ? 3 : letter.toUpperCase() === 'R' ? 0 : null;
  return exponent === null ? null : Number(`${match[1]}e${exponent}`);
}
