import type { CorpusPart, CorpusSheet } from '../corpus-sheet.ts';
import type { LikenessToken, TokenKind } from './likeness-token.ts';

/** Everything that a sheet can share with another, each once. A sheet of which little is known has few. */
export function likenessTokens(sheet: CorpusSheet): readonly LikenessToken[] {
  const { traits } = sheet;
  const tokens: LikenessToken[] = [];
  if (sheet.glyphs.length > 0) tokens.push(token('topology', 'family', sheet.family, sheet.topology));
  if (sheet.glyphs.length > 0) tokens.push(token('topology', 'chain', chainOf(sheet), sheet.topology));
  if (traits.fanOut.length > 0) tokens.push(token('fan-out', '', traits.fanOut.join(', '), traits.fanOut.join(', ')));
  for (const part of sheet.parts) {
    const kind = partKind(part);
    if (kind !== null) tokens.push(token(kind, part.role, part.number, part.number));
  }
  for (const { kind, words } of traits.values) tokens.push(token('value', kind, words, words));
  if (traits.ports.length > 0) tokens.push(token('ports', '', traits.ports.join(', '), traits.ports.join(', ')));
  for (const words of traits.sharing) tokens.push(token('sharing', '', words, words));
  return [...new Map(tokens.map((each) => [each.key, each])).values()];
}

/** Stage kinds with their repeats, whether a barrier is crossed, and how the secondary side rectifies. */
function chainOf({ glyphs, traits }: CorpusSheet): string {
  return [...glyphs, traits.isolated ? 'isolated' : 'not isolated', traits.rectification].join(' > ');
}

function token(kind: TokenKind, of: string, value: string, words: string): LikenessToken {
  return { key: `${kind}|${of}|${value}`, kind, of, words };
}

/** Chips and switches by their numbers; passive parts are compared by value, since one capacitor is bought from many. */
export function partKind({ role }: Pick<CorpusPart, 'role'>): 'controller' | 'switch' | 'port chip' | null {
  if (role === 'protocol-controller' || role === 'microcontroller') return 'port chip';
  if (role.endsWith('controller')) return 'controller';
  if (role === 'synchronous-rectifier' || (role.endsWith('switch') && role !== 'load-switch')) return 'switch';
  return null;
}
