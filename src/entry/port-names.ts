import { nearestWord } from './nearest-word.ts';

/**
 * The port that somebody means: its name, its name in other letters, its printed form ("USB-C1", "Port A"), or "A" where
 * there is one port whose name begins so. null where no port or more than one could be meant.
 */
export function findPort(ports: readonly string[], words: string): string | null {
  const wanted = folded(words);
  const exact = ports.filter((port) => folded(port) === wanted);
  if (exact.length === 1) return exact[0] ?? null;
  if (!/^[a-z]+$/u.test(wanted)) return null;
  const only = ports.filter((port) => folded(port).replace(/\d+$/u, '') === wanted);
  return only.length === 1 ? (only[0] ?? null) : null;
}

/** The nearest port name, for "did you mean". */
export function nearestPort(ports: readonly string[], words: string): string | null {
  return nearestWord(words, ports);
}

function folded(name: string): string {
  return name
    .toLowerCase()
    .replace(/^usb[-\s]*|^port\s+/u, '')
    .replace(/[\s_-]+/gu, '');
}
