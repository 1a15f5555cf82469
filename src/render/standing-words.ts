import type { Source, Standing } from '../values/value.ts';

const WORDS: Readonly<Record<Standing, string>> = {
  read: 'read in the source itself',
  secondary: 'read in a quotation of it',
  memory: 'from memory, not checked against the source',
  'common practice': 'common practice, no published source',
  'worked apart': 'worked out apart from this program',
};

/** What the standing of a source means, in words for readers; null where its title says it already. */
export function standingWords({ title, standing }: Pick<Source, 'title' | 'standing'>): string | null {
  const isUnpublished = standing === 'common practice' || standing === 'worked apart';
  return isUnpublished && title.toLowerCase().startsWith(standing) ? null : WORDS[standing];
}
