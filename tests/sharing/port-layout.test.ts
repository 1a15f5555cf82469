import { describe, expect, test } from 'vitest';
import { portLayout } from '../../src/sharing/port-layout.ts';
import { shareMatrix } from '../../src/sharing/share-matrix-of.ts';
import type { Entry } from '../../src/entry/entry.ts';
import type { OfferBody } from '../../src/usb-pd/offer.ts';
import { allocation, entryWithPorts, outputPort, sharing } from './entry-with-ports.ts';

const BODIES: readonly OfferBody[] = [
  { kind: 'fixed', volts: 5, amps: 3 },
  { kind: 'variable', minVolts: 5, maxVolts: 12, amps: 2 },
  { kind: 'battery', minVolts: 5, maxVolts: 12, watts: 20 },
  { kind: 'PPS', minVolts: 3.3, maxVolts: 21, amps: 3, powerLimited: null },
  { kind: 'SPR AVS', ampsTo15V: 3, ampsTo20V: 2.25 },
  { kind: 'EPR AVS', minVolts: 15, maxVolts: 28, watts: 140 },
  { kind: 'plain', volts: 12, amps: 2 },
];

const layoutOf = (entry: Entry): ReturnType<typeof portLayout> => portLayout(entry, shareMatrix(entry));

describe('what a page takes along for the planner', () => {
  test('every kind of offer without how it was written, each share once, and the sets that are not known', () => {
    const offers = BODIES.map((body) => ({ ...body, written: 'as written', word: 0x0801912c, path: ['ports', 'C1', 'offers'] }));
    const ports = [outputPort('C1', '65 W', { offers }), outputPort('C2', '30 W'), outputPort('A1', null)];
    expect(layoutOf(entryWithPorts(ports, sharing([allocation({ C1: '45 W', 'C2/A1': '15 W' })])))).toEqual({
      ports: [
        { id: 'C1', connector: 'USB-C', offers: BODIES },
        { id: 'C2', connector: 'USB-C', offers: [] },
        { id: 'A1', connector: 'USB-C', offers: [] },
      ],
      rows: [
        { ports: ['C1'], order: null, shares: [{ ports: ['C1'], watts: 65 }] },
        { ports: ['C2'], order: null, shares: [{ ports: ['C2'], watts: 30 }] },
        {
          ports: ['C1', 'C2', 'A1'],
          order: null,
          shares: [
            { ports: ['C1'], watts: 45 },
            { ports: ['C2', 'A1'], watts: 15 },
          ],
        },
      ],
      unknown: [['A1'], ['C1', 'C2'], ['C1', 'A1'], ['C2', 'A1']],
    });
  });

  test('nothing with one port, and nothing where no set is known', () => {
    expect(layoutOf(entryWithPorts([outputPort('C1', '65 W')], null))).toBeNull();
    expect(layoutOf(entryWithPorts([outputPort('C1', null), outputPort('C2', null)], null))).toBeNull();
  });
});
