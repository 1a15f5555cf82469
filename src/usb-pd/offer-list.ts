import { isDigitAt, isSpaceAt } from '../units/characters.ts';
import { cursorOn, hasErrors, isAtEnd, refusalOf, remark, writtenBetween } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import type { Quantity, ReadingRemark } from '../units/quantity.ts';
import { readMeasure } from '../units/read-measure.ts';
import type { OfferBody } from './offer.ts';
import { bodiesOf, isComplete, isRange } from './offer-draft.ts';
import type { OfferDraft } from './offer-draft.ts';
import { readKeyword } from './offer-keyword.ts';
import type { Keyword, NamedKind } from './offer-keyword.ts';
import { offerOfObject } from './offer-of-object.ts';
import { offStep } from './offer-steps.ts';
import { offerWatts } from './offer-watts.ts';
import { decodeObject } from './power-data-object.ts';
import { readRawWord } from './raw-word.ts';

/** An offer with how it was written, and the word where one was given. */
export type ReadOffer = OfferBody & { readonly written: string; readonly word: number | null };

/** All that a text of offers says. `total` is a printed power of the whole port, in watts. */
export interface OfferList {
  readonly offers: readonly ReadOffer[];
  readonly total: number | null;
  readonly remarks: readonly ReadingRemark[];
}

/** Eleven objects with their text are well below this. */
const LONGEST_LIST = 600;

interface ListState {
  readonly cursor: Cursor;
  readonly offers: ReadOffer[];
  draft: OfferDraft | null;
  /** Kind announced for the next offer, or for all that follow. */
  announced: Keyword | null;
  /** A comma, semicolon or slash stood since the last piece. */
  isSeparated: boolean;
  pendingAmps: { readonly amps: number; readonly start: number; readonly end: number } | null;
  total: Quantity | null;
}

/** Reads a list of offers with its printed total. Errors are among the remarks. */
export function readOfferList(text: string): OfferList {
  const refusal = refusalOf(text, 'a list of offers', LONGEST_LIST);
  if (refusal !== null) return { offers: [], total: null, remarks: [refusal] };
  const cursor = cursorOn(text);
  const state: ListState = { cursor, offers: [], draft: null, announced: null, isSeparated: false, pendingAmps: null, total: null };
  while (!hasErrors(cursor.remarks)) {
    skipSeparators(state);
    if (isAtEnd(cursor)) break;
    const before = cursor.at;
    if (!readPiece(state) && !hasErrors(cursor.remarks)) refusePiece(cursor);
    if (cursor.at === before) break;
  }
  if (!hasErrors(cursor.remarks)) finishList(state);
  return { offers: state.offers, total: state.total?.nominal ?? null, remarks: cursor.remarks };
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
  if (word !== null) return addWord(state, word, start);
  const keyword = readKeyword(cursor);
  if (keyword !== null) return addKeyword(state, keyword);
  const measures = readMeasure(cursor, { dimension: null, bareNumber: null, isFuse: false });
  if (measures === null) return false;
  for (const measure of measures) addMeasure(state, measure, start);
  state.isSeparated = false;
  return true;
}

function addWord(state: ListState, word: number, start: number): boolean {
  closeDraft(state);
  const { cursor } = state;
  const object = decodeObject(word);
  const written = writtenBetween(cursor, start, cursor.at);
  const body = offerOfObject(object);
  if (body !== null) state.offers.push({ ...body, written, word });
  else if (object.kind === 'empty')
    remark(cursor, 'note', `${written} is filler: an unused place of an extended message`, start, cursor.at);
  else remark(cursor, 'error', `${written} is of a kind that USB PD reserves: it offers nothing that can be read`, start, cursor.at);
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

function newDraft(state: ListState, start: number): OfferDraft {
  const kind: NamedKind | null = state.announced === null || state.announced.kind === 'power limited' ? null : state.announced.kind;
  const isUnderHeading = state.announced?.isHeading ?? false;
  if (!isUnderHeading) state.announced = null;
  return { kind, isUnderHeading, volts: [], amps: [], watts: null, powerLimited: null, start, end: start };
}

function addMeasure(state: ListState, measure: Quantity, start: number): void {
  if (measure.dimension === 'voltage') addVolts(state, measure, start);
  else if (measure.dimension === 'current') addAmps(state, measure, start);
  else if (measure.dimension === 'power') addWatts(state, measure, start);
  else
    remark(
      state.cursor,
      'error',
      `“${measure.written}” is no part of an offer: volts, amperes or watts are expected`,
      start,
      state.cursor.at,
    );
}

function addVolts(state: ListState, measure: Quantity, start: number): void {
  const { cursor } = state;
  const isShared = state.draft !== null && !isComplete(state.draft) && !isRange(state.draft) && state.draft.volts.length > 0;
  // A current written first ("3 A @ 5 V") waits for this voltage.
  if (!isShared && (state.draft !== null || state.pendingAmps === null)) closeDraft(state);
  const draft = state.draft ?? newDraft(state, state.pendingAmps?.start ?? start);
  state.draft = draft;
  draft.volts.push(...voltsOf(measure));
  draft.end = cursor.at;
  if (state.pendingAmps !== null) draft.amps.push(state.pendingAmps.amps);
  state.pendingAmps = null;
}

/** "5/9/15 V" rises like a minimum, typical and maximum, but in a list of offers they are three voltages. */
function voltsOf(measure: Quantity): { low: number; high: number }[] {
  const low = measure.low ?? measure.nominal;
  const high = measure.high ?? measure.nominal;
  if (!measure.written.includes('/') || low === high) return [{ low, high }];
  return [low, measure.nominal, high].map((volts) => ({ low: volts, high: volts }));
}

function addAmps(state: ListState, measure: Quantity, start: number): void {
  const { draft, cursor } = state;
  const takesSecond = draft?.kind === 'SPR AVS' || draft?.kind === 'AVS';
  const amps = [measure.nominal];
  if (draft === null || (draft.amps.length > 0 && !(takesSecond && draft.amps.length === 1))) {
    closeDraft(state);
    const isNamed = state.announced?.kind === 'SPR AVS';
    if (!isNamed) {
      state.pendingAmps = { amps: measure.nominal, start, end: cursor.at };
      return;
    }
    state.draft = newDraft(state, start);
    state.draft.amps.push(...amps);
    state.draft.end = cursor.at;
    return;
  }
  draft.amps.push(...amps);
  draft.end = cursor.at;
}

/** Watts belong to the offer that lacks them, repeat what volts and amperes give, or are the total of the port. */
function addWatts(state: ListState, measure: Quantity, start: number): void {
  const { draft, cursor } = state;
  if (draft !== null && !isComplete(draft)) {
    draft.watts = measure.nominal;
    draft.end = cursor.at;
    return;
  }
  const isAnnounced = draft === null && ['AVS', 'EPR AVS', 'SPR AVS'].includes(state.announced?.kind ?? '');
  if (isAnnounced) {
    state.draft = { ...newDraft(state, start), watts: measure.nominal, end: cursor.at };
    return;
  }
  const last = draft === null ? undefined : draft.volts.at(-1);
  const own = last === undefined ? 0 : last.high * (draft?.amps[0] ?? 0);
  const isTotal = measure.qualifier === 'maximum' || draft === null;
  if (!isTotal && Math.abs(own - measure.nominal) <= 0.01 * measure.nominal) return;
  state.total = measure;
}

function closeDraft(state: ListState): void {
  const { cursor, draft, pendingAmps } = state;
  state.draft = null;
  if (pendingAmps !== null && draft === null) {
    state.pendingAmps = null;
    remark(
      cursor,
      'error',
      `“${writtenBetween(cursor, pendingAmps.start, pendingAmps.end)}” is a current without its voltage`,
      pendingAmps.start,
      pendingAmps.end,
    );
    return;
  }
  if (draft === null) return;
  const written = writtenBetween(cursor, draft.start, draft.end).trim();
  const isAmongPps = state.offers.at(-1)?.kind === 'PPS';
  for (const body of bodiesOf(cursor, draft, isAmongPps)) {
    if (isRepeated(state, body)) continue;
    const why = offStep(body);
    if (why !== null) remark(cursor, 'warning', why, draft.start, draft.end);
    state.offers.push({ ...body, written, word: null });
  }
}

/** A tester that prints a word and its meaning says one thing twice. */
function isRepeated(state: ListState, body: OfferBody): boolean {
  const last = state.offers.at(-1);
  const object = last?.word == null ? null : offerOfObject(decodeObject(last.word));
  return object !== null && JSON.stringify({ ...object, powerLimited: null }) === JSON.stringify({ ...body, powerLimited: null });
}

function finishList(state: ListState): void {
  closeDraft(state);
  const { cursor, offers, total, announced } = state;
  if (state.pendingAmps !== null) closeDraft(state);
  if (offers.length === 0 && !hasErrors(cursor.remarks)) {
    const what = announced === null ? 'no offer' : `no volts and amperes behind “${String(announced.kind)}”`;
    remark(cursor, 'error', `${what}: an offer is volts and amperes, such as 9 V 3 A`, 0, cursor.text.length);
    return;
  }
  checkTotal(state, total);
}

/** 1 % of slack: 9 V × 2.22 A is sold as 20 W. */
function checkTotal(state: ListState, total: Quantity | null): void {
  if (total === null || hasErrors(state.cursor.remarks)) return;
  const most = Math.max(...state.offers.map(offerWatts));
  if (Math.abs(most - total.nominal) <= 0.01 * total.nominal) return;
  const message = `${total.written} is printed, and the offers reach ${most} W`;
  state.cursor.remarks.push({ severity: 'warning', message, suggestion: null, span: total.span });
}
