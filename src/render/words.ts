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

/** A number and its unit belong on one line. */
const BEFORE_UNIT = /(\d) (?=(?:[kMmµnp]?(?:V|A|W|Ω|F|H|Hz|J|s|Wh|Ah)|%|°C|mm|cm|cm³|W\/cm³|W\/kg|g|kg|min|USD|EUR)(?![A-Za-z]))/g;

/** Plain text of the author as markup, with each number kept beside its unit. */
export function sentence(text: string): string {
  return escapeText(text).replace(BEFORE_UNIT, '$1\u00a0');
}
