import type { CableLimit } from './cable.ts';
import { currentAt } from './current-at.ts';
import { nominalPpsVolts } from './offer-watts.ts';
import type { OfferBody } from './offer.ts';

/** What a device asks of a port. */
export interface PowerNeed {
  /** The voltage that it must have for its full power; null where any will do. */
  readonly volts: number | null;
  readonly watts: number;
  /** It asks for PPS at that voltage (or at any where `volts` is null). Without a PPS offer it takes a fixed one, at less speed. */
  readonly pps?: boolean;
}

/** What the port gives it. */
export interface Supply<O extends OfferBody = OfferBody> {
  /** Power that the device gets: never more than it needs; 0 where nothing fits. */
  readonly watts: number;
  /** The offer that it takes; null where none fits. */
  readonly offer: O | null;
  /** The voltage at which it takes it. */
  readonly volts: number | null;
  /** Full power, at the voltage and in the way that it needs. */
  readonly isMet: boolean;
  /** In words, number first: "65 W", "no 20 V, falls to 15 V 45 W". */
  readonly reason: string;
}

interface Choice<O extends OfferBody> {
  readonly offer: O;
  readonly volts: number;
  readonly watts: number;
  readonly isCutByCable: boolean;
}

/** Room for labels that round: 9 V × 2.22 A is sold, and asked for, as 20 W. */
const ROUNDING = 0.01;

/** What a device gets from a list of offers through a cable. A cable of null sets no limit (a captive cable, or none known). */
export function supplies<O extends OfferBody>(offers: readonly O[], need: PowerNeed, cable: CableLimit | null = null): Supply<O> {
  const wanted = best(choicesFor(offers, need, cable));
  if (wanted !== null) return answer(wanted, need, '', cable);
  const lacking = lack(need);
  const otherwise = best(fallbacks(offers, need, cable));
  if (otherwise === null)
    return { watts: 0, offer: null, volts: null, isMet: false, reason: `${lacking}, and nothing that it can fall to` };
  return answer(otherwise, need, `${lacking}, falls to `, cable);
}

function lack({ volts, pps }: PowerNeed): string {
  const at = volts === null ? '' : `${words(volts)} V`;
  return pps === true ? `no PPS ${volts === null ? '' : `at ${at}`}`.trim() : at === '' ? 'no fixed voltage' : `no ${at}`;
}

function choicesFor<O extends OfferBody>(offers: readonly O[], need: PowerNeed, cable: CableLimit | null): Choice<O>[] {
  return offers.flatMap((offer) => {
    if ((offer.kind === 'PPS') !== (need.pps === true)) return [];
    const volts = need.volts ?? topVolts(offer);
    return volts === null ? [] : (choice(offer, volts, cable) ?? []);
  });
}

/** What a device takes that does not find its voltage: the largest fixed offer below it, as no device takes more volts than it asks for. */
function fallbacks<O extends OfferBody>(offers: readonly O[], need: PowerNeed, cable: CableLimit | null): Choice<O>[] {
  return offers.flatMap((offer) => {
    if (offer.kind !== 'fixed' && offer.kind !== 'plain') return [];
    if (need.volts !== null && offer.volts > need.volts + 0.025) return [];
    return choice(offer, offer.volts, cable) ?? [];
  });
}

function choice<O extends OfferBody>(offer: O, volts: number, cable: CableLimit | null): Choice<O> | null {
  const amps = currentAt(offer, volts);
  if (amps === null || (cable !== null && volts > cable.volts)) return null;
  const through = cable === null ? amps : Math.min(amps, cable.amps);
  return { offer, volts, watts: Number((volts * through).toPrecision(12)), isCutByCable: through < amps };
}

/** The voltage at which an offer gives most; adjustable ones at their nominal top. */
function topVolts(offer: OfferBody): number | null {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return offer.volts;
    case 'PPS':
      return nominalPpsVolts(offer.maxVolts);
    case 'EPR AVS':
      return offer.maxVolts;
    case 'SPR AVS':
      return offer.ampsTo20V === null ? 15 : 20;
    case 'variable':
    case 'battery':
      return null;
  }
}

/** Most watts; among equals the lower voltage, which every cable bears. */
function best<O extends OfferBody>(choices: readonly Choice<O>[]): Choice<O> | null {
  return choices.reduce<Choice<O> | null>((most, next) => {
    if (most === null || next.watts > most.watts + 1e-9) return next;
    return Math.abs(next.watts - most.watts) <= 1e-9 && next.volts < most.volts ? next : most;
  }, null);
}

function answer<O extends OfferBody>(chosen: Choice<O>, need: PowerNeed, lead: string, cable: CableLimit | null): Supply<O> {
  const { offer, volts, isCutByCable } = chosen;
  const isEnough = chosen.watts >= need.watts * (1 - ROUNDING);
  const watts = isEnough ? need.watts : chosen.watts;
  const place = lead === '' ? '' : `${words(volts)} V `;
  const cut = !isEnough && isCutByCable && cable !== null ? `: the cable carries ${words(cable.amps)} A` : '';
  return { watts, offer, volts, isMet: lead === '' && isEnough, reason: `${lead}${place}${words(watts)} W${cut}` };
}

function words(value: number): string {
  return String(Number(value.toPrecision(4)));
}
