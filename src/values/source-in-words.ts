import { shortStanding } from './short-standing.ts';
import type { Source } from './value.ts';

/** A source as one line, with its standing where it is weaker than read. */
export function sourceInWords({ title, section, standing }: Source): string {
  const name = [title, section].filter((part) => part !== '').join(', ');
  return standing === 'memory' || standing === 'secondary' ? `${name} (${shortStanding(standing)})` : name;
}
