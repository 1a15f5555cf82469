import { supplies, type Supply } from '../usb-pd/supplies.ts';
import { sameNeed } from './device-address.ts';
import type { Device } from './device-need.ts';
import { compareScores, compareWithAllPlugged, type PlanScore } from './plan-score.ts';
import type { LaidOutPort, LayoutRow, PortLayout } from './port-layout.ts';
import { rowGrants, scoreOf, type RowGrants, type SupplyAt } from './row-grants.ts';

/** One device in a plan. */
export interface PlannedDevice {
  /** null: it is left out. */
  readonly port: string | null;
  readonly watts: number;
  /** It gets all it needs, in the way that it asks for. */
  readonly isMet: boolean;
  /** What the port's offers alone would give it; null where it is left out or the port's offers are not listed. */
  readonly supply: Supply | null;
}

/** Which device goes where. */
export interface Plan {
  readonly row: LayoutRow;
  /** In the order of the devices asked about. */
  readonly devices: readonly PlannedDevice[];
  readonly score: PlanScore;
}

/** The answer to "these devices, these needs". */
export interface Planning {
  /** The best plans; more than one where they are equal. Empty where no known set fits. */
  readonly best: readonly Plan[];
  /** Plans that power more devices at the price of needs met; null where the best ones do already. */
  readonly allPlugged: readonly Plan[] | null;
  /** For each device, why no port can meet its need even alone; null where one can or may. */
  readonly hindrances: readonly (string | null)[];
  /** Sets that these devices could use and of which nothing is known: a better plan may lie there. Empty where the best meets all. */
  readonly unknown: readonly (readonly string[])[];
}

type Compare = (one: PlanScore, other: PlanScore) => number;

const NOTHING: PlanScore = { met: 0, powered: 0, worst: 0, total: 0 };

/**
 * Where to plug which device, by trying every way over every set of ports whose shares are known: exact. A port in company is
 * taken to keep the voltages that it offers alone. A device with a share of its own gets the least of need, share and offer; a pool
 * is divided as well as can be.
 */
export function planDevices(layout: PortLayout, devices: readonly Device[]): Planning {
  const supplyAt = suppliesOf(layout, devices);
  let best: readonly Plan[] = [];
  let allPlugged: readonly Plan[] = [];
  // Large sets first: they soon give a plan that the small ones do not reach.
  for (const row of layout.rows.toReversed()) {
    const grants = rowGrants(row, devices, supplyAt);
    const look = (atPorts: readonly number[]): boolean => {
      if (atPorts.length < row.ports.length) {
        const bound = grants.bound(atPorts);
        return !isBeaten(bound, best, compareScores) || !isBeaten(bound, allPlugged, compareWithAllPlugged);
      }
      const score = scoreOf(grants.of(atPorts), atPorts, devices);
      const plan = (): Plan => planOf(row, atPorts, grants, score, devices, supplyAt);
      best = leading(best, score, plan, compareScores);
      allPlugged = leading(allPlugged, score, plan, compareWithAllPlugged);
      return true;
    };
    forEachWay(row.ports.length, devices, look);
  }
  const score = best[0]?.score ?? NOTHING;
  return {
    best: inOrderOf(layout.rows, best),
    allPlugged: (allPlugged[0]?.score ?? NOTHING).powered > score.powered ? inOrderOf(layout.rows, allPlugged) : null,
    hindrances: devices.map((_, index) => hindranceOf(index, layout.ports, supplyAt)),
    unknown: score.met === devices.length ? [] : layout.unknown.filter((set) => set.length <= devices.length),
  };
}

/** The plans that nothing beats, with one more looked at. A plan that gives no device any power is none. */
function leading(plans: readonly Plan[], score: PlanScore, plan: () => Plan, compare: Compare): readonly Plan[] {
  if (score.powered === 0) return plans;
  const difference = compare(score, plans[0]?.score ?? NOTHING);
  return difference > 0 ? [plan()] : difference < 0 ? plans : [...plans, plan()];
}

/** Equal plans in the order of the sets; those that give more devices the voltage that they ask for come first. */
function inOrderOf(rows: readonly LayoutRow[], plans: readonly Plan[]): readonly Plan[] {
  const amiss = (plan: Plan): number => plan.devices.filter(({ supply }) => supply !== null && !supply.isMet).length;
  return plans.toSorted((one, other) => amiss(one) - amiss(other) || rows.indexOf(one.row) - rows.indexOf(other.row));
}

/** Whether the leading plans beat a score, so that nothing up to it needs to be looked at. */
function isBeaten(score: PlanScore, plans: readonly Plan[], compare: Compare): boolean {
  return compare(score, plans[0]?.score ?? NOTHING) < 0;
}

/** Supply of each device at each port, worked out once. */
function suppliesOf(layout: PortLayout, devices: readonly Device[]): SupplyAt {
  const known = new Map(
    layout.ports.flatMap(({ id, offers }) =>
      offers.length === 0 ? [] : [[id, devices.map(({ need }) => supplies(offers, need))] as const],
    ),
  );
  return (device, port) => known.get(port)?.[device] ?? null;
}

/**
 * Every way to put devices into all of so many ports, one a port: the device at each port. Devices that ask for the same change
 * places without effect, so the first of them always takes the earlier port. `look` also sees every beginning of a way, and answers
 * whether to go on from there.
 */
function forEachWay(ports: number, devices: readonly Device[], look: (atPorts: readonly number[]) => boolean): void {
  const twins = devices.map(({ need }, index) => devices.slice(0, index).findLastIndex((other) => sameNeed(other.need, need)));
  const chosen: number[] = [];
  const choose = (): void => {
    if (!look(chosen) || chosen.length === ports) return;
    for (const [device, twin] of twins.entries()) {
      if (chosen.includes(device) || (twin !== -1 && !chosen.includes(twin))) continue;
      chosen.push(device);
      choose();
      chosen.pop();
    }
  };
  if (ports <= devices.length) choose();
}

function planOf(
  row: LayoutRow,
  atPorts: readonly number[],
  grants: RowGrants,
  score: PlanScore,
  devices: readonly Device[],
  supplyAt: SupplyAt,
): Plan {
  const granted = grants.of(atPorts);
  const planned = devices.map((_, index): PlannedDevice => {
    const place = atPorts.indexOf(index);
    const port = row.ports[place] ?? null;
    if (port === null) return { port, watts: 0, isMet: false, supply: null };
    return { port, watts: granted[place]?.watts ?? 0, isMet: granted[place]?.isMet ?? false, supply: supplyAt(index, port) };
  });
  return { row, devices: planned, score };
}

/** Why no port meets a need even with all its power; null where one does, or where its offers are not listed. */
function hindranceOf(device: number, ports: readonly LaidOutPort[], supplyAt: SupplyAt): string | null {
  const answers = ports.map(({ id }) => ({ id, supply: supplyAt(device, id) }));
  if (answers.some(({ supply }) => supply === null || supply.isMet)) return null;
  const most = answers.reduce((best, next) => ((next.supply?.watts ?? 0) > (best.supply?.watts ?? 0) ? next : best));
  return most.supply === null ? null : `${most.supply.reason} at ${most.id}`;
}
