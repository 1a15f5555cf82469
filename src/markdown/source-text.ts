import type { Source } from '../values/value.ts';

/** A source as one line of a message; one from memory says so. */
export function sourceText(source: Source): string {
  const name = [source.title, source.section].filter((part) => part !== '').join(', ');
  return source.standing === 'memory' ? `${name} (from memory)` : name;
}
