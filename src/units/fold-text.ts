/**
 * A text with look-alike code points folded to one each, and the way back to the offsets of what was written.
 * Non-breaking and narrow spaces stay apart (U+00A0) because only they group digits without doubt.
 */
export interface FoldedText {
  readonly text: string;
  /** Start in the original of the folded unit at this index. */
  startAt(index: number): number;
  /** End in the original of the folded unit before this index. */
  endAt(index: number): number;
}

/** Each row: the code points that people paste, and what the readers see. Written as escapes because they look alike. */
const ROWS: readonly (readonly [string, string])[] = [
  ['\u00B5\u03BC', '\u00B5'],
  ['\u2126\u03A9', '\u03A9'],
  ['\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFE63\u02D7\u2043\u23AF\u2796', '-'],
  ['\u223C\u301C\u02DC\u2053\u223F\u23E6\u223B', '~'],
  ['\u00D7\u2715\u2716\u2A2F\u2573\u2A09\u0445\u0425', '\u00D7'],
  ['\u2217\u204E\u2731', '*'],
  ['\u00B7\u22C5\u2022\u2219\u30FB\uFF65\u2027\u0387', '\u00B7'],
  ['\u00A0\u2007\u2008\u2009\u200A\u202F\u2006\u2005', '\u00A0'],
  ['\u1680\u2000\u2001\u2002\u2003\u2004\u205F\u3000\t\n\r\v\f\u2028\u2029\u0085', ' '],
  ['\u2393\u268C\u2550\u2393\u2261', '\u2393'],
  ['\u00B0\u02DA\u00BA\u1D52\u2218\u25E6', '\u00B0'],
  ['\u2033\u201D\u201C\u201F\u201E\u02BA\u3003\u02EE', '"'],
  ['\u2032\u2019\u2018\u201B\u00B4\u0060\u02B9\u02BC', "'"],
  ['\u2264\u2A7D\u2266', '\u2264'],
  ['\u2265\u2A7E\u2267', '\u2265'],
  ['\u2300\u00D8\u00F8\u2205\u03A6\u03C6\u03D5', '\u2300'],
  ['\u2044\u2215\u29F8', '/'],
  ['\u3001\uFF64\uFE50\uFE51\u3002\uFF61', ';'],
  ['\u060C\u066C', ','],
  ['\u066B', '.'],
  ['\u066A\uFE6A', '%'],
  ['\u2236\uFE55\uFE30', ':'],
  ['\uFE66', '='],
  ['\u2248\u2245\u2243', '\u2248'],
  ['\u22EF\u2025', '\u2026'],
];

const INVISIBLE = '\u200B\u200C\u200D\u200E\u200F\u2060\uFEFF\u00AD\uFE0E\uFE0F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069';

const FOLDED: ReadonlyMap<string, string> = foldedCharacters();

function foldedCharacters(): Map<string, string> {
  const folded = new Map<string, string>();
  for (const [written, meant] of ROWS) for (const character of written) folded.set(character, meant);
  for (const character of INVISIBLE) folded.set(character, '');
  for (const block of [0x0660, 0x06f0])
    for (let digit = 0; digit < 10; digit += 1) folded.set(String.fromCodePoint(block + digit), String(digit));
  return folded;
}

/** Full-width forms, squared units such as U+338C and degree signs with their letter decompose by the Unicode tables (NFKC). */
function isCompatibilityForm(code: number): boolean {
  return (code >= 0xff01 && code <= 0xff5e) || (code >= 0x3371 && code <= 0x33df) || code === 0x2103 || code === 0x2109;
}

function foldCharacter(character: string): string {
  const row = FOLDED.get(character);
  if (row !== undefined) return row;
  const code = character.codePointAt(0) ?? 0;
  if (!isCompatibilityForm(code)) return character;
  let folded = '';
  for (const part of character.normalize('NFKC')) folded += FOLDED.get(part) ?? part;
  return folded;
}

function isPlain(text: string): boolean {
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code > 126 || code < 32 || code === 96) return false;
  }
  return true;
}

/** Folds a text, keeping for each unit of the result where it came from. */
export function foldText(original: string): FoldedText {
  if (isPlain(original)) return { text: original, startAt: (index) => index, endAt: (index) => index };
  const starts: number[] = [];
  const ends: number[] = [];
  let text = '';
  let offset = 0;
  for (const character of original) {
    const folded = foldCharacter(character);
    for (let unit = 0; unit < folded.length; unit += 1) {
      starts.push(offset);
      ends.push(offset + character.length);
    }
    text += folded;
    offset += character.length;
  }
  return {
    text,
    startAt: (index) => starts[index] ?? original.length,
    endAt: (index) => (index <= 0 ? 0 : (ends[index - 1] ?? original.length)),
  };
}
