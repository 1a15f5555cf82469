import { remark } from '../units/cursor.ts';
import type { Quantity } from '../units/quantity.ts';
import { isComplete, isRange } from './offer-draft.ts';
import { closeDraft, newDraft } from './offer-list-state.ts';
import type { ListState } from './offer-list-state.ts';

/** Gives volts, amperes or watts to the offer they belong to. */
export function addMeasure(state: ListState, measure: Quantity, start: number): void {
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
