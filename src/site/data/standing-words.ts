import type { Standing } from '../../values/value.ts';

const WORDS: Readonly<Record<Standing, string>> = {
  read: 'read in the source itself',
  secondary: 'read in a quotation of it',
  memory: 'from memory, not checked against the source',
  'common practice': 'common practice, no published source',
};

/** What the standing of a source means, in words for readers. */
export function standingWords(standing: Standing): string {
  return WORDS[standing];
}
