import { isMissing, type Known } from '../../src/values/value.ts';
import type { Entry, EfficiencyPoint } from '../../src/entry/entry.ts';
import type { OfferBody } from '../../src/usb-pd/offer.ts';
import { bySlug, entriesIn, type CheckedEntry } from '../demo/entries-in.ts';

/** Every published design, read, computed and checked. */
export const DESIGNS: readonly CheckedEntry[] = entriesIn(import.meta.dirname);

export const CUBIC_INCH = 0.0254 ** 3;

export function design(slug: string): CheckedEntry {
  return bySlug(DESIGNS, slug);
}

/** The number itself. @throws with the reason where it is missing. */
export function known(value: Known | undefined): number {
  if (value === undefined) throw new Error('not there');
  if (isMissing(value)) throw new Error(value.reason);
  return value.nominal;
}

/** Watts of each fixed or plain offer of a port, to the hundredth. */
export function offeredWatts(entry: Entry, port: string): readonly number[] {
  const offers = entry.ports.find((candidate) => candidate.id === port)?.offers ?? [];
  return offers.flatMap((offer: OfferBody) =>
    offer.kind === 'fixed' || offer.kind === 'plain' ? [Math.round(offer.volts * offer.amps * 100) / 100] : [],
  );
}

/** A stated result by what it is of and its basis or place. @throws where no such claim stands. */
export function claimed(
  entry: Entry,
  of: string,
  more: { readonly basis?: string; readonly where?: string; readonly line?: string; readonly output?: string } = {},
): number {
  const found = entry.claims.find(
    (claim) =>
      claim.of === of &&
      (more.basis === undefined || claim.basis === more.basis) &&
      (more.where === undefined || claim.where === more.where) &&
      (more.line === undefined || claim.line === more.line) &&
      (more.output === undefined || claim.output === more.output),
  );
  if (found?.quantity === null || found?.quantity === undefined) throw new Error(`${entry.slug} claims no ${of}`);
  return found.quantity.nominal;
}

/** Rows of one set voltage, in the order written. */
export function rowsAt(entry: Entry, volts: number): readonly EfficiencyPoint[] {
  return entry.efficiency.filter((point) => point.output?.quantity.nominal === volts);
}
