import { roleOf } from '../roles/index.ts';

/** Trade name of a role id; an id that is not declared is shown as words. */
export function roleWords(role: string): string {
  return roleOf(role)?.name ?? role.replaceAll('-', ' ');
}
