import type { Source, Standing } from '../values/value.ts';

const WORDS: Readonly<Record<Standing, string>> = {
  read: 'read in the source itself',
  secondary: 'read in a quotation of it',
  memory: 'from memory, not checked against the source',
  'common practice': 'common practice, no published source',
};

/** What the standing of a source means, in words for readers; null where its title says it already. */
export function standingWords({ title, standing }: Pick<Source, 'title' | 'standing'>): string | null {
  return standing === 'common practice' && title.toLowerCase().startsWith('common practice') ? null : WORDS[standing];
}
