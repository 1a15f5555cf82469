import { foldText } from './fold-text.ts';

/**
 * The text with one code point for each meaning: micro, ohm, dash, multiplication, space, direct current, degree, quotes, full-width
 * and squared forms. For search keys and comparison; what is shown stays as written.
 */
export function canonicalText(text: string): string {
  return foldText(text).text.replaceAll('\u00A0', ' ');
}
