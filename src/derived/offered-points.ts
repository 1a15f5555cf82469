import type { Port } from '../entry/entry.ts';
import { electricPower } from '../formulas/energy/electric-power.ts';
import type { OutputPoint } from '../stages/models/stage-model.ts';
import type { Offer } from '../usb-pd/offer.ts';
import { applyFormula } from '../values/apply-formula.ts';
import type { Value } from '../values/value.ts';
import { largest, offerValue } from './offered.ts';

type Pair = readonly [volts: number, amps: number];

/**
 * Every voltage that a port offers, with the most current offered there: both ends of an adjustable range. The highest voltage is
 * not the worst corner for every part, so a stage model looks at all of them.
 */
export function offeredPoints(port: Port): readonly OutputPoint[] {
  const before = KNOWN.get(port);
  if (before !== undefined) return before;
  const points = pointsOf(port);
  KNOWN.set(port, points);
  return points;
}

/** Stresses, losses, every measured load and every reading ask a port for the same. */
const KNOWN = new WeakMap<Port, readonly OutputPoint[]>();

function pointsOf(port: Port): readonly OutputPoint[] {
  const limit = port.power?.quantity.nominal ?? Number.POSITIVE_INFINITY;
  const best = new Map<number, { amps: number; offer: Offer }>();
  for (const offer of port.offers) {
    for (const [volts, amps] of pairsOf(offer)) {
      // An adjustable range is limited by the power of the port, a fixed offer stands as it is written.
      const drawn = offer.kind === 'fixed' || offer.kind === 'plain' ? amps : Math.min(amps, limit / volts);
      const known = best.get(volts);
      if (volts > 0 && drawn > 0 && (known === undefined || drawn > known.amps)) best.set(volts, { amps: drawn, offer });
    }
  }
  return [...best].sort(([a], [b]) => a - b).map(([volts, { amps, offer }]) => pointOf(volts, amps, offer, port));
}

function pairsOf(offer: Offer): readonly Pair[] {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return [[offer.volts, offer.amps]];
    case 'variable':
    case 'PPS':
      return [
        [offer.minVolts, offer.amps],
        [offer.maxVolts, offer.amps],
      ];
    case 'battery':
      return [
        [offer.minVolts, offer.watts / offer.minVolts],
        [offer.maxVolts, offer.watts / offer.maxVolts],
      ];
    case 'EPR AVS':
      return [
        [offer.minVolts, Math.min(EPR_AMPS, offer.watts / offer.minVolts)],
        [offer.maxVolts, Math.min(EPR_AMPS, offer.watts / offer.maxVolts)],
      ];
    case 'SPR AVS':
      return offer.ampsTo20V === null
        ? [[15, offer.ampsTo15V]]
        : [
            [15, offer.ampsTo15V],
            [20, offer.ampsTo20V],
          ];
  }
}

/** Most current that a port offers at a voltage, fixed or within a range; null where it does not offer that voltage. */
export function offeredCurrentAt(port: Port, volts: number): Value<'current'> | null {
  const limit = port.power?.quantity.nominal ?? Number.POSITIVE_INFINITY;
  const offered = port.offers.flatMap((offer) => {
    const amps = ampsAt(offer, volts);
    const drawn = amps === null || offer.kind === 'fixed' || offer.kind === 'plain' ? amps : Math.min(amps, limit / volts);
    return drawn === null || !(drawn > 0) ? [] : [offerValue('current', drawn, offer, port)];
  });
  return largest(offered);
}

function ampsAt(offer: Offer, volts: number): number | null {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return offer.volts === volts ? offer.amps : null;
  if (offer.kind === 'SPR AVS') {
    if (volts >= 9 && volts <= 15) return offer.ampsTo15V;
    return volts > 15 && volts <= 20 ? offer.ampsTo20V : null;
  }
  if (volts < offer.minVolts || volts > offer.maxVolts) return null;
  if (offer.kind === 'battery') return offer.watts / volts;
  return offer.kind === 'EPR AVS' ? Math.min(EPR_AMPS, offer.watts / volts) : offer.amps;
}

/** Most current of an extended-range cable, in amperes (USB PD, common practice of 5 A cables). */
const EPR_AMPS = 5;

function pointOf(volts: number, amps: number, offer: Offer, port: Port): OutputPoint {
  const voltage = offerValue('voltage', volts, offer, port);
  const current = offerValue('current', amps, offer, port);
  return { voltage, current, power: applyFormula(electricPower, { voltage, current }), name: `${short(volts)} V ${short(amps)} A` };
}

function short(number: number): string {
  return String(Number(number.toPrecision(3)));
}
