import { isDigitAt, isSpaceAt } from '../units/characters.ts';
import { cursorOn, hasErrors, isAtEnd, refusalOf, remark, writtenBetween } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import type { Quantity, ReadingRemark } from '../units/quantity.ts';
import { readMeasure } from '../units/read-measure.ts';
import { addMeasure } from './add-measure.ts';
import { askByteOrder, hexWord } from './byte-order.ts';
import { isComplete, isRange } from './offer-draft.ts';
import { readKeyword } from './offer-keyword.ts';
import type { Keyword } from './offer-keyword.ts';
import { closeDraft } from './offer-list-state.ts';
import type { ListState, ReadOffer } from './offer-list-state.ts';
import { offerOfObject } from './offer-of-object.ts';
import { offerWatts } from './offer-watts.ts';
import { decodeObject } from './power-data-object.ts';
import { readPastedDump } from './pasted-dump.ts';
import { readRawWord } from './raw-word.ts';
import { remarkPlaces } from './word-places.ts';
import type { PlacedWord } from './word-places.ts';

export type { ReadOffer } from './offer-list-state.ts';

/** All that a text of offers says. `total` is a printed power of the whole port, in watts. */
export interface OfferList {
  readonly offers: readonly ReadOffer[];
  readonly total: number | null;
  /** Every word of the text in order, fillers of an EPR message included. */
  readonly words: readonly number[];
  readonly remarks: readonly ReadingRemark[];
}

/** Eleven objects with their text are well below this. */
const LONGEST_LIST = 600;

/** Reads a list of offers with its printed total. Errors are among the remarks. */
export function readOfferList(text: string): OfferList {
  const refusal = refusalOf(text, 'a list of offers', LONGEST_LIST);
  if (refusal !== null) return { offers: [], total: null, words: [], remarks: [refusal] };
  const cursor = cursorOn(text);
  const state: ListState = {
    cursor,
    offers: [],
    words: [],
    draft: null,
    announced: null,
    isSeparated: false,
    pendingAmps: null,
    total: null,
  };
  const dump = readPastedDump(cursor);
  for (const placed of dump ?? []) addWord(state, placed, hexWord(placed.word));
  while (dump === null && !hasErrors(cursor.remarks)) {
    skipSeparators(state);
    if (isAtEnd(cursor)) break;
    const before = cursor.at;
    if (!readPiece(state) && !hasErrors(cursor.remarks)) refusePiece(cursor);
    if (cursor.at === before) break;
  }
  if (!hasErrors(cursor.remarks)) finishList(state);
  const words = state.words.map(({ word }) => word);
  return { offers: state.offers, total: state.total?.nominal ?? null, words, remarks: cursor.remarks };
}

const STRONG = ',;/·|+&';
const WEAK = ' \u00A0()[]-@⎓=×*x:.';

function skipSeparators(state: ListState): void {
  const { cursor } = state;
  while (!isAtEnd(cursor)) {
    const sign = cursor.text.charAt(cursor.at);
    if (sign === '.' && isDigitAt(cursor.text, cursor.at + 1)) return;
    // A full stop closes an offer as a comma does: "15V/3A. 20V/5A".
    if (STRONG.includes(sign) || sign === '.') state.isSeparated = true;
    else if (!WEAK.includes(sign)) return;
    cursor.at += 1;
  }
}

/** Quotes the odd piece only, so that the words around it can be seen. */
function refusePiece(cursor: Cursor): void {
  const start = cursor.at;
  let end = start + 1;
  while (end < cursor.text.length && !isSpaceAt(cursor.text, end) && !STRONG.includes(cursor.text.charAt(end))) end += 1;
  const piece = writtenBetween(cursor, start, end);
  remark(cursor, 'error', `“${piece}” is no part of an offer: volts and amperes, a kind, or a 32-bit word are expected`, start, end);
}

function readPiece(state: ListState): boolean {
  const { cursor } = state;
  const start = cursor.at;
  const word = readRawWord(cursor);
  if (word === undefined) return true;
  if (word !== null) return addWord(state, { word, start, end: cursor.at }, writtenBetween(cursor, start, cursor.at));
  const keyword = readKeyword(cursor);
  if (keyword !== null) return addKeyword(state, keyword);
  const measures = readMeasure(cursor, { dimension: null, bareNumber: null, isFuse: false });
  if (measures === null) return false;
  for (const measure of measures) addMeasure(state, measure, start);
  state.isSeparated = false;
  return true;
}

function addWord(state: ListState, placed: PlacedWord, written: string): boolean {
  closeDraft(state);
  const { word } = placed;
  const body = offerOfObject(decodeObject(word));
  state.words.push(placed);
  if (body !== null) state.offers.push({ ...body, written, word });
  state.isSeparated = false;
  return true;
}

function addKeyword(state: ListState, keyword: Keyword): boolean {
  const { draft, cursor } = state;
  if (keyword.kind === null) return true;
  if (keyword.kind === 'power limited') {
    if (draft !== null) draft.powerLimited = true;
    return true;
  }
  const isInside = draft !== null && !isComplete(draft) && draft.kind === null && isRange(draft) && !keyword.isHeading;
  if (isInside) {
    draft.kind = keyword.kind;
    return true;
  }
  const isBehind = draft !== null && isComplete(draft) && draft.kind === null && !state.isSeparated && !keyword.isHeading;
  if (isBehind && (isRange(draft) || keyword.kind === 'plain' || keyword.kind === 'fixed')) {
    draft.kind = keyword.kind;
    draft.end = cursor.at;
    return true;
  }
  closeDraft(state);
  state.announced = keyword;
  return true;
}

function finishList(state: ListState): void {
  closeDraft(state);
  const { cursor, offers, total, announced } = state;
  if (state.pendingAmps !== null) closeDraft(state);
  askByteOrder(cursor, state.words);
  if (!hasErrors(cursor.remarks)) refuseReserved(cursor, state.words);
  if (hasErrors(cursor.remarks)) return;
  remarkPlaces(cursor, state.words);
  if (offers.length === 0 && state.words.length === 0) {
    const what = announced === null ? 'no offer' : `no volts and amperes behind “${String(announced.kind)}”`;
    remark(cursor, 'error', `${what}: an offer is volts and amperes, such as 9 V 3 A`, 0, cursor.text.length);
    return;
  }
  checkTotal(state, total);
}

/** Said only once the words are known to be in their order: turned round, an ordinary word may look like one of these. */
function refuseReserved(cursor: Cursor, words: readonly PlacedWord[]): void {
  for (const { word, start, end } of words) {
    if (decodeObject(word).kind !== 'reserved') continue;
    const written = writtenBetween(cursor, start, end);
    remark(cursor, 'error', `${written} is of a kind that USB PD reserves: it offers nothing that can be read`, start, end);
  }
}

/** 1 % of slack: 9 V × 2.22 A is sold as 20 W. */
function checkTotal(state: ListState, total: Quantity | null): void {
  if (total === null || state.offers.length === 0 || hasErrors(state.cursor.remarks)) return;
  const most = Math.max(...state.offers.map(offerWatts));
  if (Math.abs(most - total.nominal) <= 0.01 * total.nominal) return;
  const message = `${total.written} is printed, and the offers reach ${most} W`;
  state.cursor.remarks.push({ severity: 'warning', message, suggestion: null, span: total.span });
}
