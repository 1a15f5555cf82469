import { endOfLetters, isLetterAt, isWordAt } from './characters.ts';
import { valueOfDigitCode } from './digit-code.ts';
import { remark, skipSpaces, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { DIMENSION_NAMES } from './dimension-names.ts';
import type { Dimension } from './dimension.ts';
import type { Term, Wanted } from './read-term.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';

const PREFIX_LETTERS: readonly string[] = ['p', 'n', 'u', 'µ', 'm', 'k', 'K', 'M', 'G'];

/** Says that the unit behind a number is missing or unknown, and what was probably meant; moves behind the unknown word. */
export function refuseUnit(cursor: Cursor, term: Term, wanted: Wanted): void {
  if (term.refusal !== null) {
    const { refused, instead, end } = term.refusal;
    const suggestion = `${writtenBetween(cursor, term.numeral.start, term.numeral.end)} ${instead}`;
    const meant = instead === 'pF' ? 'picofarad' : 'microfarad';
    remark(cursor, 'error', `${refused}: old spelling of ${meant}; write ${instead}`, end - refused.length, end, suggestion);
    cursor.at = Math.max(cursor.at, end);
    return;
  }
  const number = writtenBetween(cursor, term.start, term.end);
  skipSpaces(cursor);
  const start = cursor.at;
  const expected = expectation(wanted.dimension);
  if (!isLetterAt(cursor.text, start)) {
    cursor.at = Math.max(start, term.end);
    remark(cursor, 'error', `unit missing after “${number}”: ${expected}`, term.start, term.end, asMarking(number, wanted.dimension));
    return;
  }
  let end = endOfLetters(cursor.text, start);
  while (isWordAt(cursor.text, end)) end += 1;
  cursor.at = end;
  const word = writtenBetween(cursor, start, end);
  if (PREFIX_LETTERS.includes(word)) {
    remark(cursor, 'error', `unit missing after “${number} ${word}”: ${expected}`, term.start, end);
    return;
  }
  const near = nearestSpelling(cursor.text.slice(start, end), wanted.dimension);
  const why = start === term.end || near !== null ? `“${word}” is no unit` : `unit missing after “${number}”: “${word}” is no unit`;
  remark(cursor, 'error', `${why}; ${expected}`, start, end, near === null ? null : `${number} ${near}`);
}

/** A bare three-digit number in a capacitor row may be the marking on the part. */
function asMarking(number: string, wanted: Dimension | null): string | null {
  if (wanted !== 'capacitance') return null;
  const picofarads = valueOfDigitCode(number);
  return picofarads === null || number.length !== 3 ? null : `${picofarads} pF, if this is the marking on the part`;
}

function expectation(dimension: Dimension | null): string {
  if (dimension === null) return 'a number needs its unit, such as V, A, W, Ω, µF, µH, mm or g';
  return `${DIMENSION_NAMES[dimension].phrase} is in ${DIMENSION_NAMES[dimension].units}`;
}

/** A known spelling that differs in case or in one letter, of the wanted dimension first. Only for words of two letters and more. */
function nearestSpelling(word: string, wanted: Dimension | null): string | null {
  const lower = word.toLowerCase();
  let near: string | null = null;
  for (const [spelling, units] of UNIT_SPELLINGS) {
    const isCaseOnly = spelling.toLowerCase() === lower;
    if (!isCaseOnly && (word.length < 3 || !isOneLetterAway(lower, spelling.toLowerCase()))) continue;
    const unit = units.find((candidate) => candidate.dimension === wanted) ?? units[0];
    if (unit === undefined || (wanted !== null && unit.dimension !== wanted)) continue;
    if (isCaseOnly) return unit.symbol;
    near ??= unit.symbol;
  }
  return near;
}

function isOneLetterAway(one: string, other: string): boolean {
  if (Math.abs(one.length - other.length) > 1) return false;
  let same = 0;
  while (same < one.length && same < other.length && one.charAt(same) === other.charAt(same)) same += 1;
  const rest = one.slice(same);
  const others = other.slice(same);
  return rest.slice(1) === others.slice(1) || rest === others.slice(1) || rest.slice(1) === others;
}
