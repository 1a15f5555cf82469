/** What a class 2 dielectric code says: temperature range and the change of capacitance over it. */
export interface DielectricRange {
  readonly minimumCelsius: number;
  readonly maximumCelsius: number;
  readonly lowest: number;
  readonly highest: number;
}

// EIA-198 letters; sources: TI SLAA701B, Holy Stone application page. Y −30 and Z +10 as most of them print.
const MINIMUM: Readonly<Record<string, number>> = { X: -55, Y: -30, Z: 10 };
const MAXIMUM: Readonly<Record<string, number>> = { 2: 45, 4: 65, 5: 85, 6: 105, 7: 125, 8: 150, 9: 200 };
const CHANGE: Readonly<Record<string, readonly [number, number]>> = {
  A: [-0.01, 0.01],
  B: [-0.015, 0.015],
  C: [-0.022, 0.022],
  D: [-0.033, 0.033],
  E: [-0.047, 0.047],
  F: [-0.075, 0.075],
  P: [-0.1, 0.1],
  R: [-0.15, 0.15],
  S: [-0.22, 0.22],
  T: [-0.33, 0.22],
  U: [-0.56, 0.22],
  V: [-0.82, 0.22],
};

/** Class 1 codes in use, with the spellings that put a letter O for the zero. */
const CLASS_1: Readonly<Record<string, string>> = {
  C0G: 'C0G',
  COG: 'C0G',
  NP0: 'C0G',
  NPO: 'C0G',
  U2J: 'U2J',
  S2H: 'S2H',
  R2H: 'R2H',
  P2H: 'P2H',
  T2H: 'T2H',
};

/** Range of a class 2 code such as X7R, or null for a code that is none. */
export function dielectricRange(code: string): DielectricRange | null {
  const minimumCelsius = MINIMUM[code.charAt(0)];
  const maximumCelsius = MAXIMUM[code.charAt(1)];
  const change = CHANGE[code.charAt(2)];
  if (code.length !== 3 || minimumCelsius === undefined || maximumCelsius === undefined || change === undefined) return null;
  return { minimumCelsius, maximumCelsius, lowest: change[0], highest: change[1] };
}

/** Canonical code of a ceramic dielectric, class 1 or 2, or null: NP0, NPO and COG are C0G. */
export function canonicalDielectric(word: string): string | null {
  const code = word.toUpperCase();
  return CLASS_1[code] ?? (dielectricRange(code) === null ? null : code);
}
