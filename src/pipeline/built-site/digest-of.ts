import { createHash } from 'node:crypto';

// Many pages follow from one large list, such as the finder's rows: it is read through once.
const HELD = new WeakMap<object, string>();

/** Short hash over plain data that a page follows from. */
export function digestOf(parts: readonly unknown[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(typeof part === 'object' && part !== null ? digestOfObject(part) : String(part)).update('\n');
  return hash.digest('hex').slice(0, 32);
}

function digestOfObject(part: object): string {
  const held = HELD.get(part);
  if (held !== undefined) return held;
  const digest = createHash('sha256').update(JSON.stringify(part)).digest('hex');
  HELD.set(part, digest);
  return digest;
}
