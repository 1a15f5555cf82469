import type { Span } from '../units/quantity.ts';

/** The ports that an allocation's key names: each element has one power of its own, or one that several ports share. */
export interface AllocationKey {
  readonly groups: readonly (readonly PortWord[])[];
  /** Whether the key gives the order of plugging: "C1 then C2". */
  readonly ordered: boolean;
}

interface PortWord {
  readonly word: string;
  readonly span: Span;
}

/** Outcome of taking a key apart; a refused one says where and why. */
export type KeyReading =
  { readonly ok: true; readonly keys: readonly AllocationKey[] } | { readonly ok: false; readonly message: string; readonly span: Span };

/**
 * Takes apart "C1 + C2", "C1 + (C2 + A1)", "C1 then C2" and the printed "C1/C2", which stands for each of the two alone.
 */
export function readAllocationKey(text: string): KeyReading {
  const alternatives = text.includes('/') && !/[+()]|\bthen\b/u.test(text);
  if (alternatives) {
    const words = wordsIn(text, /[^/]+/gu);
    return { ok: true, keys: words.map((word) => ({ groups: [[word]], ordered: false })) };
  }
  const blank = /(?:^|[+(])\s*(?<plus>\+)|(?<last>\+)\s*(?:\)|$)/u.exec(text);
  if (blank !== null) {
    const plus = blank.groups?.['plus'] === undefined ? blank.index : blank.index + blank[0].length - 1;
    return { ok: false, message: 'A port is missing beside this plus sign.', span: { start: plus, end: plus + 1 } };
  }
  const ordered = /\bthen\b/u.test(text);
  const groups: PortWord[][] = [];
  for (const piece of text.matchAll(/\((?<inner>[^()]*)\)|(?<word>[^+()]+)|(?<stray>[()])/gu)) {
    const { inner, word, stray } = piece.groups ?? {};
    if (stray !== undefined) return { ok: false, message: 'A bracket has no partner.', span: { start: piece.index, end: piece.index + 1 } };
    if (inner !== undefined) groups.push(shifted(wordsIn(inner, /[^+]+/gu), piece.index + 1));
    else if (word !== undefined && word.trim() !== '')
      groups.push(...shifted(wordsIn(word, /.+?(?=\s+then\s+|$)/gu), piece.index).map((each) => [each]));
  }
  if (groups.length === 0 || groups.some((group) => group.length === 0)) {
    return { ok: false, message: 'No port is named here.', span: { start: 0, end: text.length } };
  }
  return { ok: true, keys: [{ groups, ordered }] };
}

function wordsIn(text: string, pattern: RegExp): PortWord[] {
  return [...text.matchAll(pattern)].flatMap((match) => {
    const withoutThen = match[0].replace(/^\s*then\s+/u, (then) => ' '.repeat(then.length));
    const word = withoutThen.trim();
    const start = match.index + (withoutThen.length - withoutThen.trimStart().length);
    return word === '' ? [] : [{ word, span: { start, end: start + word.length } }];
  });
}

function shifted(words: readonly PortWord[], by: number): PortWord[] {
  return words.map(({ word, span }) => ({ word, span: { start: span.start + by, end: span.end + by } }));
}
