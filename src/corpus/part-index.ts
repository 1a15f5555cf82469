import type { PartPage } from './part-uses.ts';
import { ROLES } from '../roles/index.ts';

const PLACES: ReadonlyMap<string, number> = new Map(ROLES.map((role, index) => [role.id, index]));

/** Part numbers of one role that stand together in the index. */
export interface RoleGroup {
  readonly role: string;
  readonly parts: readonly PartPage[];
}

/** Parts in the order of the index: by their most frequent role as the registry lists roles, then by number. */
export function indexOrder(parts: readonly PartPage[]): readonly PartPage[] {
  const placeOf = (part: PartPage): number => PLACES.get(part.roles[0] ?? '') ?? ROLES.length;
  return [...parts].sort((one, other) => placeOf(one) - placeOf(other));
}

/** Cuts one page of the index into groups of a role each. */
export function byRole(parts: readonly PartPage[]): readonly RoleGroup[] {
  const groups: { role: string; parts: PartPage[] }[] = [];
  for (const part of parts) {
    const role = part.roles[0] ?? '';
    const last = groups.at(-1);
    if (last?.role === role) last.parts.push(part);
    else groups.push({ role, parts: [part] });
  }
  return groups;
}
