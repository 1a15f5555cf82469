import type { Source } from './value.ts';

/** A source as one line, with its standing where it is weaker than read. */
export function sourceInWords(source: Source): string {
  const name = [source.title, source.section].filter((part) => part !== '').join(', ');
  if (source.standing === 'memory') return `${name} (from memory)`;
  if (source.standing === 'secondary') return `${name} (as quoted elsewhere)`;
  return name;
}
