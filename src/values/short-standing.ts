import type { Standing } from './value.ts';

const WORDS: Readonly<Record<Standing, string>> = {
  read: 'read',
  secondary: 'as quoted elsewhere',
  memory: 'from memory',
  'common practice': 'common practice',
  'worked apart': 'worked apart',
};

/** How a source is known, in a word or two for a cell or brackets; `standingWords` of the pages says it as a sentence. */
export function shortStanding(standing: Standing): string {
  return WORDS[standing];
}
