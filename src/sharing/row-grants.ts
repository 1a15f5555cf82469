import type { Supply } from '../usb-pd/supplies.ts';
import type { Device } from './device-need.ts';
import type { PlanScore } from './plan-score.ts';
import { dividePool, type Claim } from './pool-division.ts';
import type { LayoutRow } from './port-layout.ts';

/** What the offers of a port alone would give a device; null where the port's offers are not listed. */
export type SupplyAt = (device: number, port: string) => Supply | null;

/** What one device gets at one port. */
export interface Grant {
  readonly watts: number;
  readonly isMet: boolean;
}

/** How the shares of one set go to devices. `atPorts` is the device at each port of the set, in the order of the set. */
export interface RowGrants {
  /** What each of them gets. */
  readonly of: (atPorts: readonly number[]) => readonly Grant[];
  /** A score that no way to fill the ports still free can beat. */
  readonly bound: (atPorts: readonly number[]) => PlanScore;
}

/** Room for shares and needs that round: 9 V × 2.22 A is sold, and asked for, as 20 W. */
const ROUNDING = 0.01;

const NO_GRANT: Grant = { watts: 0, isMet: false };

/** The grants of a set. What a share gives to the devices that draw on it is worked out once and kept. */
export function rowGrants(row: LayoutRow, devices: readonly Device[], supplyAt: SupplyAt): RowGrants {
  const own = ownGrants(row, devices, supplyAt);
  const pools = row.shares.filter((share) => share.ports.length > 1).map((share) => poolGrants(share, row, devices, supplyAt));
  const most = row.ports.map((port, place) => own[place]?.reduce(atBest, NO_GRANT) ?? mostOfPool(port, row));
  return {
    of(atPorts) {
      const grants = atPorts.map((device, place) => own[place]?.[device] ?? NO_GRANT);
      for (const pool of pools) pool(atPorts, grants);
      return grants;
    },
    bound(atPorts) {
      return scoreOf(
        most.map((free, place) => own[place]?.[atPorts[place] ?? -1] ?? free),
        atPorts,
        devices,
      );
    },
  };
}

/** For each port with a share of its own what each device gets there; undefined for a port on a pool. */
function ownGrants(row: LayoutRow, devices: readonly Device[], supplyAt: SupplyAt): readonly (readonly Grant[] | undefined)[] {
  return row.ports.map((port) => {
    const share = row.shares.find((candidate) => candidate.ports.length === 1 && candidate.ports[0] === port);
    return share === undefined
      ? undefined
      : devices.flatMap((_, device) => granted(share.watts, [claimOf(device, port, devices, supplyAt)]));
  });
}

function poolGrants(
  share: LayoutRow['shares'][number],
  row: LayoutRow,
  devices: readonly Device[],
  supplyAt: SupplyAt,
): (atPorts: readonly number[], grants: Grant[]) => void {
  const places = share.ports.map((port) => row.ports.indexOf(port));
  const kept = new Map<number, readonly Grant[]>();
  return (atPorts, grants) => {
    const key = places.reduce((sofar, place) => sofar * devices.length + (atPorts[place] ?? 0), 0);
    const held =
      kept.get(key) ??
      granted(
        share.watts,
        places.map((place, index) => claimOf(atPorts[place] ?? 0, share.ports[index] ?? '', devices, supplyAt)),
      );
    kept.set(key, held);
    for (const [index, place] of places.entries()) grants[place] = held[index] ?? NO_GRANT;
  };
}

function atBest(one: Grant, other: Grant): Grant {
  return { watts: Math.max(one.watts, other.watts), isMet: one.isMet || other.isMet };
}

/** A pool counted evenly for its ports, so that they add up to no more than all of it; any of them might be met. */
function mostOfPool(port: string, row: LayoutRow): Grant {
  const pool = row.shares.find((share) => share.ports.includes(port));
  return { watts: pool === undefined ? 0 : (pool.watts * (1 + ROUNDING)) / pool.ports.length, isMet: true };
}

function claimOf(device: number, port: string, devices: readonly Device[], supplyAt: SupplyAt): Claim {
  const watts = devices[device]?.need.watts ?? 0;
  const supply = supplyAt(device, port);
  return { watts, most: supply?.watts ?? watts, isMeetable: supply?.isMet ?? true };
}

function granted(share: number, claims: readonly Claim[]): readonly Grant[] {
  return dividePool(roomFor(share, claims), claims).map((watts, index) => {
    const claim = claims[index];
    return { watts, isMet: claim !== undefined && claim.isMeetable && watts >= claim.watts * (1 - 1e-9) };
  });
}

/** A share that falls short of what is asked of it by no more than labels round covers it. */
function roomFor(watts: number, claims: readonly Claim[]): number {
  const asked = claims.reduce((sum, { most }) => sum + most, 0);
  return watts >= asked * (1 - ROUNDING) ? Math.max(watts, asked) : watts;
}

/** Score of what devices get at ports; a port without a device yet counts as one whose device is content. */
export function scoreOf(grants: readonly Grant[], atPorts: readonly number[], devices: readonly Device[]): PlanScore {
  let [met, powered, worst, total] = [0, 0, 1, 0];
  for (let place = 0; place < grants.length; place += 1) {
    const { watts, isMet } = grants[place] ?? NO_GRANT;
    if (watts <= 0) continue;
    powered += 1;
    total += watts;
    if (isMet) met += 1;
    const need = devices[atPorts[place] ?? -1]?.need.watts;
    if (need !== undefined) worst = Math.min(worst, watts / need);
  }
  return { met, powered, worst: powered === 0 ? 0 : worst, total };
}
