/** Letters of the capacitor voltage code, as the number that is multiplied by the power of ten. From memory of the EIA code. */
const LETTERS: Readonly<Record<string, string>> = {
  A: '1',
  B: '1.25',
  C: '1.6',
  D: '2',
  E: '2.5',
  F: '3.15',
  V: '3.5',
  G: '4',
  W: '4.5',
  H: '5',
  J: '6.3',
  K: '8',
};

/** Rated volts of a capacitor voltage code: 1E → 25, 2G → 400, 0J → 6.3. Null for anything else. */
export function voltsOfCode(code: string): number | null {
  const match = /^([0-3])([A-Z])$/.exec(code);
  const number = match === null ? undefined : LETTERS[match[2] ?? ''];
  return match === null || number === undefined ? null : Number(`${number}e${match[1]}`);
}
