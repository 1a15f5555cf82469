import { escapeText } from '../figures/markup.ts';
import { withUnitsKept } from '../units/with-units-kept.ts';

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

/** Plain text as markup, with each number kept beside its unit. */
export function sentence(text: string): string {
  return escapeText(withUnitsKept(text));
}
