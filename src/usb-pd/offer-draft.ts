import { remark, writtenBetween } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import type { OfferBody } from './offer.ts';
import type { NamedKind } from './offer-keyword.ts';

/** Volts of one offer: a single voltage has equal ends. */
interface VoltSpan {
  readonly low: number;
  readonly high: number;
}

/** An offer while its pieces are being read. Several voltages share the current that follows ("5V/9V/12V 3A"). */
export interface OfferDraft {
  kind: NamedKind | null;
  readonly isUnderHeading: boolean;
  volts: VoltSpan[];
  amps: number[];
  watts: number | null;
  powerLimited: boolean | null;
  start: number;
  end: number;
}

export function isRange(draft: OfferDraft): boolean {
  return draft.volts.some((span) => span.low < span.high);
}

export function isComplete(draft: OfferDraft): boolean {
  return draft.volts.length > 0 && (draft.amps.length > 0 || draft.watts !== null);
}

/** Ranges of EPR AVS by rated power: USB PD R3.2 V1.1, Table 10.12. */
function eprTop(watts: number): number {
  if (watts <= 140) return 28;
  return watts <= 180 ? 36 : 48;
}

/** The highest voltage of SPR objects; a range that goes beyond needs EPR. */
const SPR_TOP = 21.5;

/** The offers that a finished draft stands for; empty after an error. After a PPS offer a range with a current is another one. */
export function bodiesOf(cursor: Cursor, draft: OfferDraft, isAmongPps: boolean): OfferBody[] {
  const kind = settledKind(cursor, draft, isAmongPps);
  if (kind === null) return [];
  if (kind === 'EPR AVS') return eprAvs(cursor, draft);
  if (kind === 'SPR AVS') return sprAvs(cursor, draft);
  if (!isComplete(draft)) return refuse(cursor, draft, draft.volts.length === 0 ? 'its voltage is missing' : 'its current is missing');
  if (draft.amps.length > 1) return refuse(cursor, draft, 'two currents are written for one offer');
  return kind === 'fixed' || kind === 'plain' ? singleVoltage(cursor, draft, kind) : spanned(cursor, draft, kind);
}

function refuse(cursor: Cursor, draft: OfferDraft, why: string): [] {
  remark(cursor, 'error', `“${writtenBetween(cursor, draft.start, draft.end).trim()}”: ${why}`, draft.start, draft.end);
  return [];
}

function settledKind(cursor: Cursor, draft: OfferDraft, isAmongPps: boolean): Exclude<NamedKind, 'AVS'> | null {
  const [span] = draft.volts;
  const top = span?.high ?? 0;
  if (draft.kind === 'AVS') return draft.watts !== null && (top > SPR_TOP || top === 0) ? 'EPR AVS' : top > SPR_TOP ? 'EPR AVS' : 'SPR AVS';
  const isFixedUnderHeading = draft.isUnderHeading && !isRange(draft) && draft.volts.length > 0 && draft.kind !== 'plain';
  if (isFixedUnderHeading) return 'fixed';
  if (draft.kind !== null) return draft.kind;
  if (!isRange(draft)) return 'fixed';
  if (isAmongPps && draft.amps.length === 1 && top <= SPR_TOP) return 'PPS';
  return guessedRange(cursor, draft, top);
}

/** A range without a word: with a current it can be little else than PPS, with a power above 20 V nothing but EPR AVS. It is said. */
function guessedRange(cursor: Cursor, draft: OfferDraft, top: number): 'PPS' | 'EPR AVS' | null {
  const guess = draft.amps.length === 1 && top <= SPR_TOP ? 'PPS' : draft.watts !== null && top > SPR_TOP ? 'EPR AVS' : null;
  if (guess === null) {
    refuse(cursor, draft, 'a range of volts needs its kind: PPS, AVS, variable or battery');
    return null;
  }
  const written = writtenBetween(cursor, draft.start, draft.end).trim();
  remark(
    cursor,
    'note',
    `“${written}” is read as ${guess}: nothing else is written as a range`,
    draft.start,
    draft.end,
    `${guess} ${written}`,
  );
  return guess;
}

function singleVoltage(cursor: Cursor, draft: OfferDraft, kind: 'fixed' | 'plain'): OfferBody[] {
  if (isRange(draft)) return refuse(cursor, draft, `a ${kind} offer has one voltage, not a range`);
  const [amps] = draft.amps;
  return draft.volts.map((span) => {
    const current = amps ?? Math.floor(((draft.watts ?? 0) / span.low) * 100 + 1e-9) / 100;
    return { kind, volts: span.low, amps: current };
  });
}

function spanned(cursor: Cursor, draft: OfferDraft, kind: 'variable' | 'battery' | 'PPS'): OfferBody[] {
  const bodies: OfferBody[] = [];
  for (const { low: minVolts, high: maxVolts } of draft.volts) {
    if (minVolts === maxVolts) return refuse(cursor, draft, `a ${kind} offer has a range of volts`);
    const [amps] = draft.amps;
    if (kind === 'battery' && draft.watts !== null) bodies.push({ kind, minVolts, maxVolts, watts: draft.watts });
    else if (kind === 'variable' && amps !== undefined) bodies.push({ kind, minVolts, maxVolts, amps });
    else if (kind === 'PPS' && amps !== undefined) bodies.push({ kind, minVolts, maxVolts, amps, powerLimited: draft.powerLimited });
    else return refuse(cursor, draft, kind === 'battery' ? 'a battery offer has watts' : `a ${kind} offer has amperes`);
  }
  return bodies;
}

function eprAvs(cursor: Cursor, draft: OfferDraft): OfferBody[] {
  const [span] = draft.volts;
  const [amps] = draft.amps;
  const watts = draft.watts ?? (amps === undefined || span === undefined ? null : Math.round(span.high * amps));
  if (watts === null) return refuse(cursor, draft, 'an EPR AVS offer has its rated watts');
  if (draft.watts === null)
    remark(cursor, 'note', `rated watts taken as ${watts} W, its highest voltage times its current`, draft.start, draft.end);
  if (span !== undefined) return [{ kind: 'EPR AVS', minVolts: span.low, maxVolts: span.high, watts }];
  const maxVolts = eprTop(watts);
  remark(cursor, 'note', `range taken as 15 to ${maxVolts} V, which USB PD gives to ${watts} W`, draft.start, draft.end);
  return [{ kind: 'EPR AVS', minVolts: 15, maxVolts, watts }];
}

function sprAvs(cursor: Cursor, draft: OfferDraft): OfferBody[] {
  const [span] = draft.volts;
  const [first, second] = draft.amps;
  if (span !== undefined && (span.low !== 9 || (span.high !== 15 && span.high !== 20))) {
    remark(cursor, 'warning', 'SPR AVS runs from 9 to 15 V or from 9 to 20 V', draft.start, draft.end);
  }
  const reaches20 = span === undefined ? second !== undefined : span.high > 15;
  if (first === undefined && draft.watts === null) return refuse(cursor, draft, 'its current is missing');
  const per = (volts: number): number => Math.min(5, Math.floor(((draft.watts ?? 0) / volts) * 100 + 1e-9) / 100);
  const ampsTo15V = first ?? Math.min(per(15), reaches20 ? 5 : 3);
  if (!reaches20) return [{ kind: 'SPR AVS', ampsTo15V, ampsTo20V: null }];
  if (second === undefined)
    remark(cursor, 'note', 'one current is written; taken for both parts of the range, to 15 V and to 20 V', draft.start, draft.end);
  return [{ kind: 'SPR AVS', ampsTo15V, ampsTo20V: second ?? first ?? per(20) }];
}
