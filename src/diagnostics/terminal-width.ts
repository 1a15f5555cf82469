/**
 * Columns that a terminal gives a text: East Asian wide and full-width characters and emoji take two, combining marks and
 * joiners none. Tabs are the caller's matter. Ranges after Unicode Standard Annex 11 (East Asian Width), blocks only.
 */
export function terminalWidth(text: string): number {
  let width = 0;
  for (const character of text) width += characterWidth(character);
  return width;
}

const NO_WIDTH = /^[\p{Mn}\p{Me}\u200b-\u200f\u2060\ufeff\ufe00-\ufe0f]$/u;
const WIDE =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\u3000-\u303e\u3300-\u33ff\uff01-\uff60\uffe0-\uffe6]$/u;

function characterWidth(character: string): number {
  if (NO_WIDTH.test(character)) return 0;
  return WIDE.test(character) ? 2 : 1;
}
