import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Device } from '../../src/sharing/device-need.ts';
import { planDevices, type Plan, type Planning } from '../../src/sharing/planner.ts';
import type { LayoutRow, PortLayout } from '../../src/sharing/port-layout.ts';
import type { OfferBody } from '../../src/usb-pd/offer.ts';
import { supplies } from '../../src/usb-pd/supplies.ts';

const fixed = (volts: number, amps: number): OfferBody => ({ kind: 'fixed', volts, amps });
const UP_TO_9 = [fixed(5, 3), fixed(9, 3)];
const UP_TO_20 = [...UP_TO_9, fixed(15, 3), fixed(20, 5)];

function row(shares: Readonly<Record<string, number>>, order: readonly string[] | null = null): LayoutRow {
  const read = Object.entries(shares).map(([names, watts]) => ({ ports: names.split('/'), watts }));
  return { ports: read.flatMap(({ ports }) => ports), order, shares: read };
}

/** Two large ports and a small one: 65 W in all, C2 and A1 on one pool of 15 W. */
const THREE_PORTS: PortLayout = {
  ports: [
    { id: 'C1', connector: 'USB-C', offers: UP_TO_20 },
    { id: 'C2', connector: 'USB-C', offers: UP_TO_9 },
    { id: 'A1', connector: 'USB-A', offers: [fixed(5, 3)] },
  ],
  rows: [
    row({ C1: 65 }),
    row({ C2: 27 }),
    row({ A1: 15 }),
    row({ C1: 45, C2: 20 }),
    row({ C1: 50, A1: 15 }),
    row({ 'C2/A1': 15 }),
    row({ C1: 45, 'C2/A1': 15 }),
  ],
  unknown: [],
};

const device = (watts: number, volts: number | null = null, pps = false): Device => ({
  name: `${watts} W`,
  need: { watts, volts, ...(pps ? { pps } : {}) },
});

function places(plan: Plan | undefined): (string | null)[] {
  return plan?.devices.map(({ port }) => port) ?? [];
}

describe('the planner', () => {
  test('puts a laptop where its voltage is, and the phone beside it', () => {
    const { best } = planDevices(THREE_PORTS, [device(18, 9), device(45, 20)]);
    expect(best.map(places)).toEqual([['C2', 'C1']]);
    expect(best[0]?.score).toEqual({ met: 2, powered: 2, worst: 1, total: 63 });
  });

  test('says what a device gets at a voltage that no offer supplies', () => {
    const { hindrances, best } = planDevices(THREE_PORTS, [device(100, 28), device(5, 5)]);
    expect(hindrances).toEqual(['no 28 V, falls to 20 V 100 W at C1', null]);
    expect(best[0]?.devices[0]).toMatchObject({ port: 'C1', isMet: false });
  });

  test('meets more needs first, and says how all can be plugged where that meets fewer', () => {
    const planning = planDevices(THREE_PORTS, [device(65, 20), device(65, 20)]);
    expect(planning.best.map(places)).toEqual([['C1', null]]);
    expect(planning.best[0]?.score.met).toBe(1);
    expect(planning.allPlugged?.map(places)).toEqual([['C1', 'C2']]);
    expect(planning.allPlugged?.[0]?.score.met).toBe(0);
  });

  test('lists equal plans, alike devices once', () => {
    const alike: PortLayout = {
      ports: ['C1', 'C2'].map((id) => ({ id, connector: 'USB-C', offers: UP_TO_20 })),
      rows: [row({ C1: 60 }), row({ C2: 60 }), row({ C1: 37.5, C2: 37.5 })],
      unknown: [],
    };
    expect(planDevices(alike, [device(45, 20)]).best.map(places)).toEqual([['C1'], ['C2']]);
    expect(planDevices(alike, [device(37.5), device(37.5)]).best.map(places)).toEqual([['C1', 'C2']]);
  });

  // Texas Instruments SLVAFG6B, section 5.2, fair share: one asks 60 W, the other 15 W: 60/15; both ask 60 W: 37.5 W each.
  test('tells the order of plugging where the shares depend on it', () => {
    const ordered: PortLayout = {
      ports: ['A', 'B'].map((id) => ({ id, connector: 'USB-C', offers: UP_TO_20 })),
      rows: [row({ A: 60 }), row({ B: 60 }), row({ A: 60, B: 15 }, ['A', 'B']), row({ A: 15, B: 60 }, ['B', 'A'])],
      unknown: [],
    };
    const { best } = planDevices(ordered, [device(60, 20), device(15)]);
    expect(best.map((plan) => [places(plan), plan.row.order])).toEqual([
      [
        ['A', 'B'],
        ['A', 'B'],
      ],
      [
        ['B', 'A'],
        ['B', 'A'],
      ],
    ]);
    expect(best[0]?.score).toEqual({ met: 2, powered: 2, worst: 1, total: 75 });
  });

  test('leaves out sets of which nothing is known, and says which', () => {
    const partly = {
      ...THREE_PORTS,
      rows: THREE_PORTS.rows.filter(({ ports }) => ports.length !== 2),
      unknown: [
        ['C1', 'C2'],
        ['C1', 'A1'],
        ['C2', 'A1'],
        ['C1', 'C2', 'A1'],
      ],
    };
    const planning = planDevices(partly, [device(45, 20), device(18, 9)]);
    expect(planning.best[0]?.score.powered).toBe(1);
    expect(planning.unknown).toEqual([
      ['C1', 'C2'],
      ['C1', 'A1'],
      ['C2', 'A1'],
    ]);
    expect(planDevices(partly, [device(45, 20)]).unknown).toEqual([]);
  });

  test('leaves a device out where there are more devices than ports', () => {
    const planning = planDevices(THREE_PORTS, [device(5), device(5), device(5), device(5)]);
    expect(planning.best[0]?.score).toEqual({ met: 3, powered: 3, worst: 1, total: 15 });
    expect(planning.best[0]?.devices.filter(({ port }) => port === null)).toHaveLength(1);
  });

  test('asks for PPS where it is asked for, and says that a fixed offer is no PPS', () => {
    const withPps: PortLayout = {
      ...THREE_PORTS,
      ports: THREE_PORTS.ports.map((port) =>
        port.id === 'C2'
          ? { ...port, offers: [...UP_TO_9, { kind: 'PPS', minVolts: 3.3, maxVolts: 11, amps: 3, powerLimited: null }] }
          : port,
      ),
    };
    expect(planDevices(withPps, [device(27, 9, true)]).best.map(places)).toEqual([['C2']]);
    expect(planDevices(THREE_PORTS, [device(27, 9, true)]).hindrances[0]).toMatch(/^no PPS at 9 V, falls to 9 V 27 W/);
  });

  test('takes the share alone where a port’s offers are not listed', () => {
    const unlisted: PortLayout = { ...THREE_PORTS, ports: THREE_PORTS.ports.map((port) => ({ ...port, offers: [] })) };
    const { best, hindrances } = planDevices(unlisted, [device(65, 20)]);
    expect(best[0]?.devices[0]).toMatchObject({ port: 'C1', isMet: true, supply: null });
    expect(hindrances).toEqual([null]);
  });

  test('has no plan without devices, and none without a known set', () => {
    expect(planDevices(THREE_PORTS, []).best).toEqual([]);
    expect(planDevices({ ...THREE_PORTS, rows: [], unknown: [['C1']] }, [device(5)])).toMatchObject({ best: [], unknown: [['C1']] });
  });
});

/** Tries every way to give devices ports, one after another and without shortcuts, and returns the best numbers. */
function bruteForce(layout: PortLayout, devices: readonly Device[], order: readonly number[]): number[] {
  let best = [0, 0, 0, 0];
  const go = (chosen: readonly (string | null)[]): void => {
    if (chosen.length < devices.length) {
      for (const port of [null, ...layout.ports.map(({ id }) => id)]) if (port === null || !chosen.includes(port)) go([...chosen, port]);
      return;
    }
    const used = chosen.filter((port) => port !== null);
    for (const candidate of layout.rows.filter(({ ports }) => ports.length === used.length && ports.every((port) => used.includes(port)))) {
      const score = numbers(candidate, layout, devices, chosen);
      const difference = order.map((place) => (score[place] ?? 0) - (best[place] ?? 0)).find((gap) => Math.abs(gap) > 1e-9);
      if (difference !== undefined && difference > 0) best = score;
    }
  };
  go([]);
  return best;
}

/** Met, powered, worst, total of one way; own shares only. */
function numbers(set: LayoutRow, layout: PortLayout, devices: readonly Device[], chosen: readonly (string | null)[]): number[] {
  const got = devices.flatMap(({ need }, index) => {
    const share = set.shares.find(({ ports }) => ports[0] === chosen[index]);
    const port = layout.ports.find(({ id }) => id === chosen[index]);
    if (share === undefined || port === undefined) return [];
    const supply = port.offers.length === 0 ? { watts: need.watts, isMet: true } : supplies(port.offers, need);
    const watts = Math.min(supply.watts, share.watts);
    return watts === 0 ? [] : [{ watts, fraction: watts / need.watts, isMet: supply.isMet && watts === need.watts }];
  });
  const worst = got.length === 0 ? 0 : Math.min(...got.map(({ fraction }) => fraction));
  return [got.filter(({ isMet }) => isMet).length, got.length, worst, got.reduce((sum, { watts }) => sum + watts, 0)];
}

function numbersOf(plans: Planning['best'] | null): number[] {
  const score = plans?.[0]?.score;
  return score === undefined ? [0, 0, 0, 0] : [score.met, score.powered, score.worst, score.total];
}

/** Shares and needs in half watts, far enough apart that rounding decides nothing. */
const halfWatts = fc.integer({ min: 2, max: 60 }).map((number) => number * 2);
const someOffers = fc.constantFrom<readonly OfferBody[]>([], [fixed(5, 3)], UP_TO_9, UP_TO_20);
const someDevice = fc
  .record({ watts: halfWatts, volts: fc.constantFrom(null, 5, 9, 15, 20, 28) })
  .map(({ watts, volts }) => device(watts, volts));

const someLayout = fc
  .integer({ min: 1, max: 4 })
  .chain((count) =>
    fc.record({
      offers: fc.array(someOffers, { minLength: count, maxLength: count }),
      shares: fc.array(fc.array(halfWatts, { minLength: count, maxLength: count }), { minLength: 2 ** count, maxLength: 2 ** count }),
      known: fc.array(fc.boolean(), { minLength: 2 ** count, maxLength: 2 ** count }),
    }),
  )
  .map(({ offers, shares, known }): PortLayout => {
    const ports = offers.map((list, index) => ({ id: `C${index + 1}`, connector: 'USB-C' as const, offers: list }));
    const sets = shares
      .map((watts, mask) => ({
        known: known[mask] ?? true,
        shares: Object.fromEntries(ports.flatMap(({ id }, index) => ((mask >> index) & 1 ? [[id, watts[index] ?? 0]] : []))),
      }))
      .slice(1);
    return {
      ports,
      rows: sets.filter((set) => set.known).map((set) => row(set.shares)),
      unknown: sets.filter((set) => !set.known).map((set) => Object.keys(set.shares)),
    };
  });

describe('the planner against every way tried one by one', () => {
  test('finds the same best numbers for up to four ports and five devices', () => {
    fc.assert(
      fc.property(someLayout, fc.array(someDevice, { maxLength: 5 }), (layout, devices) => {
        const planning = planDevices(layout, devices);
        const best = bruteForce(layout, devices, [0, 1, 2, 3]);
        expect(numbersOf(planning.best).map((number) => Number(number.toPrecision(9)))).toEqual(
          best.map((number) => Number(number.toPrecision(9))),
        );
        const all = bruteForce(layout, devices, [1, 0, 2, 3]);
        expect(numbersOf(planning.allPlugged ?? planning.best)[1]).toBe(all[1]);
      }),
      { seed: 20260301, numRuns: 150 },
    );
  });

  test('plugs every device into a port of its own, and gives none more than its port’s share', () => {
    fc.assert(
      fc.property(someLayout, fc.array(someDevice, { maxLength: 5 }), (layout, devices) => {
        for (const plan of planDevices(layout, devices).best) {
          const used = plan.devices.flatMap(({ port }) => port ?? []);
          expect(new Set(used)).toEqual(new Set(plan.row.ports));
          expect(used).toHaveLength(plan.row.ports.length);
          for (const [index, { port, watts }] of plan.devices.entries()) {
            const share = plan.row.shares.find(({ ports }) => port !== null && ports.includes(port))?.watts ?? 0;
            expect(watts).toBeLessThanOrEqual(Math.min(share * 1.01, devices[index]?.need.watts ?? 0));
          }
        }
      }),
      { seed: 20260302, numRuns: 100 },
    );
  });
});
