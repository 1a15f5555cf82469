import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes a file whole or not at all, and leaves one alone that has these bytes already. Returns whether it wrote. */
export function writeIfChanged(path: string, content: string | Uint8Array): boolean {
  const bytes = Buffer.from(content);
  if (statSync(path, { throwIfNoEntry: false })?.size === bytes.length && readFileSync(path).equals(bytes)) return false;
  const beside = `${path}.${String(process.pid)}.part`;
  try {
    writeFileSync(beside, bytes);
  } catch {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(beside, bytes);
  }
  renameSync(beside, path);
  return true;
}
