import { takeSign, takeWord } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';

/** Kind of offer that a word announces; `AVS` leaves open which of the two. */
export type NamedKind = 'fixed' | 'variable' | 'battery' | 'PPS' | 'SPR AVS' | 'EPR AVS' | 'AVS' | 'plain';

/** Words before or behind an offer, longest first. `null` names no kind: a heading, or a word that changes nothing. */
const KEYWORDS: readonly (readonly [string, NamedKind | 'power limited' | null])[] = [
  ['power limited', 'power limited'],
  ['power-limited', 'power limited'],
  ['adjustable voltage supply', 'AVS'],
  ['programmable power supply', 'PPS'],
  ['spr avs', 'SPR AVS'],
  ['epr avs', 'EPR AVS'],
  ['avs epr', 'EPR AVS'],
  ['avs spr', 'SPR AVS'],
  ['spr pps', 'PPS'],
  ['pps', 'PPS'],
  ['apdo', null],
  ['avs', 'AVS'],
  ['fixed', 'fixed'],
  ['variable', 'variable'],
  ['battery', 'battery'],
  ['type-c', 'plain'],
  ['bc 1.2', 'plain'],
  ['bc1.2', 'plain'],
  ['dcp', 'plain'],
  ['usb-pd', null],
  ['usb pd', null],
  ['usb-c', null],
  ['epr', null],
  ['spr', null],
  ['pdo', null],
  ['pdos', null],
  ['pd', null],
  ['supply', null],
  ['output', null],
  ['outputs', null],
  ['offers', null],
  ['total', null],
  ['max', null],
  ['maximum', null],
  ['or', null],
  ['and', null],
  ['dc', null],
];

const WORDS = KEYWORDS.map(([word]) => word);

/** A word that was read, with whether a colon follows: then it stands for all that comes. */
export interface Keyword {
  readonly kind: NamedKind | 'power limited' | null;
  readonly isHeading: boolean;
}

/** Reads a word of an offer list; null and unmoved where none stands. */
export function readKeyword(cursor: Cursor): Keyword | null {
  if (readNumbering(cursor)) return { kind: null, isHeading: false };
  const word = takeWord(cursor, WORDS);
  if (word === null) return null;
  const kind = KEYWORDS.find(([known]) => known === word)?.[1] ?? null;
  return { kind, isHeading: takeSign(cursor, ':') };
}

/** "PDO1:", "PDO 2 =", "#3", "1)" before an offer. */
function readNumbering(cursor: Cursor): boolean {
  const numbering = /^(?:PDO\s?\[?\d{1,2}\]?\s?[:=)]?|#\d{1,2}[:=)]?|\[?\d{1,2}[:)\]])(?=\s|\d|0x|$)/i.exec(
    cursor.text.slice(cursor.at, cursor.at + 12),
  );
  if (numbering === null) return false;
  cursor.at += numbering[0].length;
  return true;
}
