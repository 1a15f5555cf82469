import type { Entry } from '../../entry/entry.ts';

/**
 * Stable names of the parts of an entry, in their order: the device's address and the first reference, or stage and role where there is
 * none. A name that stands twice gets a number behind it, so that each is the key of one row.
 */
export function partIds({ slug, parts }: Entry): readonly string[] {
  const seen = new Map<string, number>();
  return parts.map(({ references, stage, role }) => {
    const id = `${slug}/${references[0] ?? `${stage}.${role}`}`;
    const count = (seen.get(id) ?? 0) + 1;
    seen.set(id, count);
    return count === 1 ? id : `${id}~${String(count)}`;
  });
}
