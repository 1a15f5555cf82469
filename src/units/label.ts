import { isDigitAt, isLetterAt, isSpaceAt, isWordAt } from './characters.ts';
import { skipSpaces } from './cursor.ts';
import type { Cursor } from './cursor.ts';

/** Names that stand before a value without an equals sign, in lower case and without subscripts' marks. */
const KNOWN: ReadonlySet<string> = new Set(
  (
    'esr dcr esl rds(on) rdson ron vds vdss vces vce vrrm vr vf vgs vgs(th) id ic if io idss ifsm isat irms idc ir ipk un ur in iin uin vin vout iout uout ' +
    'pout pin vdc vac vrms imax vmax pmax qg coss ciss crss tj tc ta fsw lm lr cr cx cy lk llk lp ls lpri np ns z zt ctr ripple width height length i2t i²t ' +
    'rds rdson(max) bv bvdss vbr vc vclamp dmax current voltage power capacity input output temp temperature frequency'
  ).split(' '),
);

/** Reads a name before a value: anything with "=" or ":" behind it, or a known name. Moves behind it; null and unmoved otherwise. */
export function readLabel(cursor: Cursor): string | null {
  const { text } = cursor;
  const start = cursor.at;
  if (!isLetterAt(text, start)) return null;
  const end = endOfLabel(text, start);
  let next = end;
  while (isSpaceAt(text, next)) next += 1;
  const sign = text.charAt(next);
  const isSigned = sign === '=' || sign === ':';
  const word = text.slice(start, end);
  if (!isSigned && !KNOWN.has(word.toLowerCase().replaceAll('_', ''))) return null;
  cursor.at = isSigned ? next + 1 : next;
  skipSpaces(cursor);
  if (opensValue(text, cursor.at)) return word;
  cursor.at = start;
  return null;
}

function endOfLabel(text: string, start: number): number {
  let end = start;
  while (isWordAt(text, end) || (text.charAt(end) === '_' && isWordAt(text, end + 1))) end += 1;
  if (text.charAt(end) !== '(') return end;
  let close = end + 1;
  while (isWordAt(text, close)) close += 1;
  if (text.charAt(close) !== ')') return end;
  const qualified = /^,? ?(?:max|typ|min)(?= ?[=:])/i.exec(text.slice(close + 1, close + 8));
  return close + 1 + (qualified?.[0].length ?? 0);
}

const LIMIT_OPENINGS = '<>≤≥~≈=±+-.';

function opensValue(text: string, index: number): boolean {
  if (isDigitAt(text, index) || (text.charAt(index) !== '' && LIMIT_OPENINGS.includes(text.charAt(index)))) return true;
  const ahead = text.slice(index, index + 9).toLowerCase();
  return ['typ', 'max', 'min', 'nom', 'up to', 'approx', 'about', 'below', 'above', 'less than', 'more than'].some((word) =>
    ahead.startsWith(word),
  );
}
