import { escapeText } from '../figures/markup.ts';

export { counted } from '../units/counted.ts';

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A count in words up to twelve, in figures above. */
export function countWord(count: number): string {
  return COUNTS[count] ?? String(count);
}

/** "C1", "C1 and C2", "C1, C2 and A1". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`;
}

/** A number and its unit belong on one line. The narrow space of plain text is too narrow between letters of a proportional face. */
const BEFORE_UNIT =
  /(\d)[ \u202f](?=(?:[kMmµnp]?(?:V|A|W|Ω|F|H|Hz|J|s|Wh|Ah|m|VAC|VDC)|K|h|%|°C|cm|px|ohms?|kg|g|min|points|USD|EUR)(?![A-Za-z]))/g;

/** Plain text with each number kept beside its unit. */
export function withUnitsKept(text: string): string {
  return text.replace(BEFORE_UNIT, '$1\u00a0');
}

/** Plain text as markup, with each number kept beside its unit. */
export function sentence(text: string): string {
  return escapeText(withUnitsKept(text));
}
