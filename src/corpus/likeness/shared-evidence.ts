import { roleOf } from '../../roles/index.ts';
import type { TokenKind, LikenessToken } from './likeness-token.ts';
import { eachShared } from './likeness-of.ts';
import type { IndexedSheet, TokenIndex } from './token-index.ts';

/** What two sheets have in common, in words, the strongest first. */
export interface SharedEvidence {
  /** "same controller VLR-81C", "same bulk capacitor 100 µF". */
  readonly words: readonly string[];
  /** Further things that they share and that say little. */
  readonly others: number;
}

/** Pieces of evidence that are named. */
const NAMED = 7;

const PORT_COUNTS = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** Evidence for the likeness of two sheets, grouped so that two switches are one phrase; the same from either side. */
export function sharedEvidence(index: TokenIndex, one: IndexedSheet, other: IndexedSheet): SharedEvidence {
  const groups = new Map<string, { readonly tokens: LikenessToken[]; weight: number }>();
  eachShared(one.tokens, other.tokens, (number) => {
    const token = index.tokens[number];
    const weight = (index.weights[number] ?? 0) ** 2;
    if (token === undefined || weight === 0) return;
    const key = groupOf(token);
    const group = groups.get(key) ?? { tokens: [], weight: 0 };
    group.tokens.push(token);
    group.weight += weight;
    groups.set(key, group);
  });
  const ranked = [...groups.values()].sort(
    (left, right) => right.weight - left.weight || (phrase(left.tokens) < phrase(right.tokens) ? -1 : 1),
  );
  return { words: ranked.slice(0, NAMED).map(({ tokens }) => phrase(tokens)), others: Math.max(0, ranked.length - NAMED) };
}

function groupOf({ kind, of }: LikenessToken): string {
  return kind === 'value' || kind === 'controller' || kind === 'port chip' ? `${kind} ${of}` : kind;
}

function phrase(tokens: readonly LikenessToken[]): string {
  const [first] = tokens;
  if (first === undefined) return '';
  const words = [...tokens].map((token) => token.words).sort();
  const listed = words.slice(0, 3).join(', ') + (words.length > 3 ? ` and ${String(words.length - 3)} more` : '');
  return PHRASES[first.kind](first, listed, words.length);
}

const PHRASES: Readonly<Record<TokenKind, (token: LikenessToken, listed: string, count: number) => string>> = {
  topology: (token) => `same stages, ${token.words}`,
  'fan-out': () => 'same way to the ports',
  controller: ({ of }, listed, count) => `same ${plural(roleName(of), count)} ${listed}`,
  switch: ({ of }, listed, count) => (count === 1 ? `same ${roleName(of)} ${listed}` : `same switches ${listed}`),
  'port chip': ({ of }, listed, count) => `same ${plural(roleName(of), count)} ${listed}`,
  value: ({ of }, listed, count) => (of === 'turns' ? `same turns ${listed}` : `same ${plural(valueName(of), count)} ${listed}`),
  ports: ({ words }) => `same ${portCount(words)} layout`,
  sharing: (_, listed, count) => (count === 1 ? `same sharing, ${listed}` : `same sharing in ${String(count)} respects`),
};

function roleName(role: string): string {
  return roleOf(role)?.name ?? role.replaceAll('-', ' ');
}

/** "bulk capacitance", "bus voltage"; other roles by their name. */
function valueName(kind: string): string {
  const known: Readonly<Record<string, string>> = {
    'bulk-capacitor': 'bulk capacitance',
    'output-capacitor': 'output capacitance',
    bus: 'bus voltage',
    magnetising: 'magnetising inductance',
  };
  return known[kind] ?? roleName(kind);
}

function plural(name: string, count: number): string {
  return count === 1 || name.endsWith('ance') || name.endsWith('voltage')
    ? name
    : `${name}${name.endsWith('s') || name.endsWith('ch') ? 'es' : 's'}`;
}

function portCount(words: string): string {
  const count = words.split(', ').length;
  return `${PORT_COUNTS[count] ?? String(count)}-port`;
}
