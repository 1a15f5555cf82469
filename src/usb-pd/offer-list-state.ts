import { remark, writtenBetween } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import type { Quantity } from '../units/quantity.ts';
import { bodiesOf } from './offer-draft.ts';
import type { OfferDraft } from './offer-draft.ts';
import type { Keyword, NamedKind } from './offer-keyword.ts';
import { offerOfObject } from './offer-of-object.ts';
import { offStep } from './offer-steps.ts';
import type { OfferBody } from './offer.ts';
import { decodeObject } from './power-data-object.ts';
import type { PlacedWord } from './word-places.ts';

/** An offer with how it was written, and the word where one was given. */
export type ReadOffer = OfferBody & { readonly written: string; readonly word: number | null };

/** A list of offers while it is being read. */
export interface ListState {
  readonly cursor: Cursor;
  readonly offers: ReadOffer[];
  /** Every word so far, fillers included. */
  readonly words: PlacedWord[];
  draft: OfferDraft | null;
  /** Kind announced for the next offer, or for all that follow. */
  announced: Keyword | null;
  /** A comma, semicolon or slash stood since the last piece. */
  isSeparated: boolean;
  pendingAmps: { readonly amps: number; readonly start: number; readonly end: number } | null;
  total: Quantity | null;
}

/** Opens the next offer, of the kind that was announced for it. */
export function newDraft(state: ListState, start: number): OfferDraft {
  const kind: NamedKind | null = state.announced === null || state.announced.kind === 'power limited' ? null : state.announced.kind;
  const isUnderHeading = state.announced?.isHeading ?? false;
  if (!isUnderHeading) state.announced = null;
  return { kind, isUnderHeading, volts: [], amps: [], watts: null, powerLimited: null, start, end: start };
}

/** Turns the open draft into offers, or says what it lacks. */
export function closeDraft(state: ListState): void {
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
