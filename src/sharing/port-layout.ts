import type { Connector, Entry } from '../entry/entry.ts';
import type { OfferBody } from '../usb-pd/offer.ts';
import { outputPorts } from './set-rows.ts';
import { setKey } from './port-sets.ts';
import type { SetRow, ShareMatrix } from './share-matrix.ts';

/** A device's ports and shares as the planner needs them: plain data, small enough to travel with a page. */
export interface PortLayout {
  readonly ports: readonly LaidOutPort[];
  /** Sets whose shares are known or implied; one row for each order of plugging where that matters. */
  readonly rows: readonly LayoutRow[];
  /** Sets of which nothing is known. */
  readonly unknown: readonly (readonly string[])[];
}

export interface LaidOutPort {
  readonly id: string;
  readonly connector: Connector;
  /** Empty where the entry does not list them: then nothing is known of its voltages. */
  readonly offers: readonly OfferBody[];
}

export interface LayoutRow {
  readonly ports: readonly string[];
  readonly order: readonly string[] | null;
  /** Each power once: of one port, or of a pool of several. Watts. */
  readonly shares: readonly { readonly ports: readonly string[]; readonly watts: number }[];
}

/** The layout of an entry's ports; null where there is nothing to plan: fewer than two ports, or no set known. */
export function portLayout(entry: Entry, matrix: ShareMatrix | null): PortLayout | null {
  if (matrix === null || matrix.ports.length < 2) return null;
  const rows = matrix.rows.filter((row) => row.standing !== 'missing').map(layoutRow);
  if (rows.length === 0) return null;
  return {
    ports: outputPorts(entry).map(({ id, connector, offers }) => ({ id, connector, offers: offers.map(bodyOf) })),
    rows,
    unknown: matrix.rows.filter((row) => row.standing === 'missing').map((row) => row.ports),
  };
}

function layoutRow({ ports, order, shares }: SetRow): LayoutRow {
  const pools = new Map(shares.map((share) => [setKey(share.pool), { ports: share.pool, watts: share.power.nominal }]));
  return { ports, order, shares: [...pools.values()] };
}

/** The offer without how and where it was written: a page does not need the words twice. */
function bodyOf(offer: OfferBody): OfferBody {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return { kind: offer.kind, volts: offer.volts, amps: offer.amps };
    case 'variable':
      return { kind: offer.kind, minVolts: offer.minVolts, maxVolts: offer.maxVolts, amps: offer.amps };
    case 'battery':
    case 'EPR AVS':
      return { kind: offer.kind, minVolts: offer.minVolts, maxVolts: offer.maxVolts, watts: offer.watts };
    case 'PPS':
      return { kind: offer.kind, minVolts: offer.minVolts, maxVolts: offer.maxVolts, amps: offer.amps, powerLimited: offer.powerLimited };
    case 'SPR AVS':
      return { kind: offer.kind, ampsTo15V: offer.ampsTo15V, ampsTo20V: offer.ampsTo20V };
  }
}
