import type { Derived, StressRow, Verdict } from '../derived/derived.ts';
import { notRankedFor } from '../derived/efficiency/absent-conditions.ts';
import { tellingEfficiency } from '../derived/telling-efficiency.ts';
import type { Entry } from '../entry/entry.ts';
import type { OfferBody } from '../usb-pd/offer.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { ComparisonRow } from './comparison-row.ts';
import { comparisonRows } from './comparison-rows.ts';
import { fittedParts, isFitted } from '../derived/fitted-parts.ts';

/** What the finder and the comparison need of one sheet beyond its summary. Plain data of a few kilobytes. */
export interface SheetFacts {
  /** What is inside the volume: "cased", "board". Density and mass are comparable on one basis only. */
  readonly basis: string;
  readonly volumeCm3: number | null;
  readonly massGrams: number | null;
  readonly wattsPerKilogram: number | null;
  /** Efficiency that stands for the device, percent; null too where its conditions are not given, since a list is sorted by it. */
  readonly efficiencyPercent: number | null;
  /** Year in which it came out, or was issued where that is not said. */
  readonly year: number | null;
  readonly price: { readonly amount: number; readonly currency: string } | null;
  /** What its main switches are made of: "GaN", "silicon". */
  readonly switches: readonly string[];
  /** Part numbers of its converter controllers. */
  readonly controllers: readonly string[];
  readonly comparison: readonly ComparisonRow[];
  /** Stresses against ratings, the worst of each role and quantity. */
  readonly stress: readonly FactStress[];
  /** Offers of the port with the most power, for one chart over several devices. */
  readonly strongestPort: { readonly id: string; readonly offers: readonly OfferBody[]; readonly watts: number | null } | null;
}

/** One stress over its rating, with its interval. */
export interface FactStress {
  readonly role: string;
  readonly quantity: string;
  readonly verdict: Verdict;
  readonly limit: number | null;
  readonly ratio: { readonly low: number; readonly nominal: number; readonly high: number } | null;
}

/** Roles whose technology is that of the power path. */
const SWITCH_ROLES: readonly string[] = ['primary-switch', 'pfc-switch', 'clamp-switch', 'buck-switch'];

/** Reads what lists across sheets need of one entry. */
export function factsOf(entry: Entry, derived: Derived): SheetFacts {
  const stress = worstStresses(derived.stress);
  const telling = tellingEfficiency(entry, derived);
  const isWhole = telling !== null && notRankedFor(telling.conditions, entry).length === 0;
  return {
    basis: derived.size.basis,
    volumeCm3: nominal(derived.size.volume, 1e-6),
    massGrams: entry.body.mass === null ? null : trimmed(entry.body.mass.quantity.nominal * 1000),
    wattsPerKilogram: nominal(derived.size.specificPower, 1),
    efficiencyPercent: isWhole ? nominal(telling.value, 0.01) : null,
    year: yearOf(entry),
    price: entry.device.price,
    switches: switchesOf(entry),
    controllers: controllersOf(entry),
    comparison: comparisonRows(entry, derived, stress),
    stress,
    strongestPort: strongestPortOf(entry),
  };
}

function nominal(known: Known, perSi: number): number | null {
  return isMissing(known) ? null : trimmed(known.nominal / perSi);
}

/** Four digits: what a list shows, without those that only binary arithmetic adds. */
function trimmed(number: number): number {
  return Number(number.toPrecision(4));
}

function yearOf(entry: Entry): number | null {
  const year = Number((entry.device.released ?? entry.published ?? '').slice(0, 4));
  return Number.isInteger(year) && year > 1900 ? year : null;
}

function switchesOf(entry: Entry): readonly string[] {
  const technologies = entry.parts
    .filter((part) => SWITCH_ROLES.includes(part.role) && isFitted(part))
    .map((part) => part.technology)
    .filter((technology) => technology !== null);
  return [...new Set(technologies)].sort();
}

/** Controllers of converters; the one that speaks the port's protocol says nothing about the power path. */
function controllersOf(entry: Entry): readonly string[] {
  const numbers = fittedParts(entry, 'controller')
    .map((part) => part.number)
    .filter((number) => number !== null);
  return [...new Set(numbers)];
}

/** One row for each role and quantity: the one with the least room below its limit; a withheld one only where no other is. */
function worstStresses(rows: readonly StressRow[]): readonly FactStress[] {
  const worst = new Map<string, FactStress>();
  for (const row of rows) {
    const { role, quantity, verdict, limit } = row;
    const ratio = isMissing(row.ratio)
      ? null
      : { low: trimmed(row.ratio.low), nominal: trimmed(row.ratio.nominal), high: trimmed(row.ratio.high) };
    const stress = { role, quantity, verdict, limit, ratio };
    const key = `${role} ${quantity}`;
    const held = worst.get(key);
    if (held === undefined || roomOf(stress) < roomOf(held)) worst.set(key, stress);
  }
  return [...worst.values()];
}

function roomOf({ ratio, limit }: FactStress): number {
  return ratio === null ? Number.POSITIVE_INFINITY : (limit ?? 1) - ratio.high;
}

function strongestPortOf(entry: Entry): SheetFacts['strongestPort'] {
  const outputs = entry.ports.filter((port) => port.direction !== 'input' && port.offers.length > 0);
  const strongest = [...outputs].sort((one, other) => (other.power?.quantity.nominal ?? 0) - (one.power?.quantity.nominal ?? 0))[0];
  if (strongest === undefined) return null;
  const offers = strongest.offers.map(bodyOf);
  return { id: strongest.id, offers, watts: strongest.power?.quantity.nominal ?? null };
}

/** The offer without where and how it was written. */
function bodyOf(offer: Entry['ports'][number]['offers'][number]): OfferBody {
  const left: readonly string[] = ['written', 'word', 'path'];
  // What is left is the body: these three are all that an offer adds to it.
  return Object.fromEntries(Object.entries(offer).filter(([key]) => !left.includes(key))) as unknown as OfferBody;
}
