const DIGIT = 1;
const LETTER = 2;

const CLASSES = asciiClasses();

function asciiClasses(): Uint8Array {
  const classes = new Uint8Array(128);
  for (let code = 48; code <= 57; code += 1) classes[code] = DIGIT;
  for (let code = 65; code <= 90; code += 1) classes[code] = LETTER;
  for (let code = 97; code <= 122; code += 1) classes[code] = LETTER;
  return classes;
}

/** A digit 0 to 9 at this index; false beyond the end. */
export function isDigitAt(text: string, index: number): boolean {
  return CLASSES[text.charCodeAt(index)] === DIGIT;
}

/** A letter, or a sign that belongs to unit names (micro, ohm, degree, powers). */
export function isLetterAt(text: string, index: number): boolean {
  const code = text.charCodeAt(index);
  if (code < 128) return CLASSES[code] === LETTER;
  if (Number.isNaN(code)) return false;
  if (code === 0xb5 || code === 0x3a9 || code === 0xb0 || code === 0xb2 || code === 0xb3) return true;
  // U+2300 and U+2393 are signs of their own; whatever Unicode calls a letter or a mark may stand in a word.
  return code > 0xbf && code !== 0xd7 && /[\p{L}\p{M}]/u.test(text.charAt(index));
}

export function isWordAt(text: string, index: number): boolean {
  return isDigitAt(text, index) || isLetterAt(text, index);
}

/** A space of either kind that folding leaves: ordinary, or one that does not break. */
export function isSpaceAt(text: string, index: number): boolean {
  const code = text.charCodeAt(index);
  return code === 32 || code === 0xa0;
}

/** Index after the run of digits that starts here. */
export function endOfDigits(text: string, index: number): number {
  let end = index;
  while (isDigitAt(text, end)) end += 1;
  return end;
}

/** Index after the run of letters that starts here. */
export function endOfLetters(text: string, index: number): number {
  let end = index;
  while (isLetterAt(text, end)) end += 1;
  return end;
}
