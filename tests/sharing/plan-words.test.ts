import { describe, expect, test } from 'vitest';
import { deviceOf } from '../../src/sharing/device-address.ts';
import { otherWays, planLines, planningNotes, planSentence } from '../../src/sharing/plan-words.ts';
import { planDevices, type Plan, type Planning } from '../../src/sharing/planner.ts';
import type { PortLayout } from '../../src/sharing/port-layout.ts';
import { USUAL_SETS } from '../../src/sharing/usual-sets.ts';
import type { PowerNeed } from '../../src/usb-pd/supplies.ts';

const LAYOUT: PortLayout = {
  ports: [
    { id: 'C1', connector: 'USB-C', offers: [5, 9, 15, 20].map((volts) => ({ kind: 'fixed', volts, amps: 5 })) },
    { id: 'C2', connector: 'USB-C', offers: [{ kind: 'fixed', volts: 5, amps: 3 }] },
    { id: 'A1', connector: 'USB-A', offers: [] },
  ],
  rows: [
    { ports: ['C1'], order: null, shares: [{ ports: ['C1'], watts: 100 }] },
    {
      ports: ['C1', 'C2'],
      order: ['C1', 'C2'],
      shares: [
        { ports: ['C1'], watts: 85 },
        { ports: ['C2'], watts: 15 },
      ],
    },
    {
      ports: ['C1', 'C2', 'A1'],
      order: null,
      shares: [
        { ports: ['C1'], watts: 65 },
        { ports: ['C2', 'A1'], watts: 15 },
      ],
    },
  ],
  unknown: [['C2', 'A1']],
};

function planned(...needs: PowerNeed[]): {
  readonly planning: Planning;
  readonly best: Plan;
  readonly devices: ReturnType<typeof deviceOf>[];
} {
  const devices = needs.map(deviceOf);
  const planning = planDevices(LAYOUT, devices);
  const [best] = planning.best;
  if (best === undefined) throw new Error('a plan was expected');
  return { planning, best, devices };
}

const plain = (words: string): string => words.replace(/[\u00a0\u202f]/g, ' ');

describe('a plan in words', () => {
  test('names port, power, need, and the cable that it takes', () => {
    const { best, devices } = planned({ watts: 100, volts: 20 });
    expect(
      planLines(best, devices).map((line) => ({ ...line, power: plain(line.power), need: plain(line.need), remark: plain(line.remark) })),
    ).toEqual([{ device: 'Laptop, 100 W', port: 'C1', power: '100 W', isMet: true, need: '100 W', remark: 'Through a cable marked 5 A.' }]);
  });

  test('says needs met first, then the worst-off device, then who is left out', () => {
    const { best } = planned({ watts: 100, volts: 20 }, { watts: 12, volts: 5 }, { watts: 30, volts: 15 }, { watts: 30, volts: 15 });
    expect(plain(planSentence(best))).toBe(
      '2 of 4 needs met, 45 W in all; the worst-off device gets 10 % of its need; 1 device gets nothing.',
    );
  });

  test('gives the order of plugging where it matters', () => {
    const { best, planning } = planned({ watts: 65, volts: 20 }, { watts: 15, volts: 5 });
    expect(plain(planSentence(best))).toContain(' Plug in this order: C1, then C2.');
    expect(otherWays(planning.best)).toEqual([]);
  });

  test('says that voltages are not listed, and that the division of a pool is the best one', () => {
    const { best, devices } = planned({ watts: 65, volts: 20 }, { watts: 5, volts: 5 }, { watts: 10, volts: 9 });
    expect(planLines(best, devices).map(({ port, remark }) => `${port} ${plain(remark)}`)).toEqual([
      'C1 Through a cable marked 5 A.',
      'C2 C2 and A1 share 15 W; this is the best division.',
      'A1 Voltages of this port are not listed. C2 and A1 share 15 W; this is the best division.',
    ]);
  });

  test('names sets that are not known only where a need is left open', () => {
    const open = planned({ watts: 65, volts: 20 }, { watts: 65, volts: 20 });
    expect(planningNotes(open.planning, open.devices)).toContain('Not known, left out here: C2 + A1. A better plan may lie there.');
    const met = planned({ watts: 65, volts: 20 }, { watts: 15, volts: 5 });
    expect(planningNotes(met.planning, met.devices)).toEqual([]);
  });
});

describe('usual sets', () => {
  test('hold no more than the planner takes, and name kinds only', () => {
    for (const devices of USUAL_SETS) {
      expect(devices.length).toBeLessThanOrEqual(6);
      for (const { name } of devices) expect(name).not.toMatch(/^Device/);
    }
  });
});
