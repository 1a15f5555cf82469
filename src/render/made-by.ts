import type { BenchLink } from '../entry/entry.ts';
import { instrumentPieces } from '../derived/bench/instruments-named.ts';
import { isSame, piecesOf } from '../derived/bench/methods-named.ts';
import { escapeText } from '../figures/markup.ts';

/** The words for a method, each part that the bench page explains a link to it; its name where an entry says nothing of its own. */
export function methodWords(named: string | null, methods: readonly BenchLink[] = []): string {
  if (named === null) return methods.map(({ id, name }) => benchLink(id, name)).join('; ');
  if (methods.length === 0) return escapeText(named);
  return linked(piecesOf(named), methods, '; ');
}

/** The words for instruments, each that stands on the bench a link to its row. */
export function instrumentWords(named: string, instruments: readonly BenchLink[] = []): string {
  const [only] = instruments;
  if (only === undefined) return escapeText(named);
  return only.name === named ? benchLink(only.id, named) : linked(instrumentPieces(named), instruments, ', ');
}

/** A link to a row of the bench page. */
export function benchLink(id: string, words: string): string {
  return `<a href="/bench/#${escapeText(id)}">${escapeText(words)}</a>`;
}

function linked(pieces: readonly string[], links: readonly BenchLink[], between: string): string {
  return pieces
    .map((piece) => {
      const found = links.find(({ name }) => isSame(name, piece));
      return found === undefined ? escapeText(piece) : benchLink(found.id, piece);
    })
    .join(between);
}
