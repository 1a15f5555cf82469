import { didYouMean } from './nearest-word.ts';

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

/** What to do about a port that is not there: the nearest name, or the names that there are. */
export function portAdvice(ports: readonly string[], words: string): string {
  const nearest = didYouMean(words, ports);
  if (nearest !== null) return nearest;
  return ports.length === 0 ? 'List the ports of the device under ports.' : `Ports here: ${ports.join(', ')}.`;
}

function folded(name: string): string {
  return name
    .toLowerCase()
    .replace(/^usb[-\s]*|^port\s+/u, '')
    .replace(/[\s_-]+/gu, '');
}
