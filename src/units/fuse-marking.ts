import { isDigitAt, isLetterAt, isSpaceAt } from './characters.ts';
import { matchUnit } from './match-unit.ts';
import { scanNumeral } from './numeral.ts';

/** Speeds of IEC 60127, longest spelling first: very quick, quick, medium, time-lag, long time-lag. */
const SPEEDS = ['FF', 'TT', 'F', 'M', 'T'] as const;

export type FuseSpeed = (typeof SPEEDS)[number];

/** The speed letter in front of a current ("T3.15A", "T 3.15 A"), with the index behind it; null where none stands. */
export function readFuseSpeed(text: string, index: number): { speed: FuseSpeed; end: number } | null {
  for (const speed of SPEEDS) {
    if (!text.startsWith(speed, index)) continue;
    const end = index + speed.length;
    let next = end;
    while (isSpaceAt(text, next)) next += 1;
    if (isCurrentAt(text, next)) return { speed, end };
  }
  return null;
}

/** A current must follow: "F1 3.15 A" names a part. */
function isCurrentAt(text: string, index: number): boolean {
  const numeral = isDigitAt(text, index) ? scanNumeral(text, index) : null;
  if (numeral === null) return false;
  let next = numeral.end;
  while (isSpaceAt(text, next)) next += 1;
  return matchUnit(text, next, 'current', true)?.unit?.dimension === 'current';
}

/** The speed letter behind a current ("3.15 A T", "3.15AT"); null where none stands. */
export function readFuseSpeedBehind(text: string, index: number): FuseSpeed | null {
  const found = SPEEDS.find((speed) => text.startsWith(speed, index) && !isLetterAt(text, index + speed.length));
  return found ?? null;
}

/** The breaking-capacity letter glued to a current: L low, E enhanced, H high (IEC 60127); null where none stands. */
export function readBreakingCapacity(text: string, index: number): 'L' | 'E' | 'H' | null {
  const letter = text.charAt(index);
  const isLetter = letter === 'L' || letter === 'E' || letter === 'H';
  return isLetter && !isLetterAt(text, index + 1) ? letter : null;
}
