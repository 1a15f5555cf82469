import { describe, expect, it } from 'vitest';
import { eprAvsTop, ppsAmps, requiredRanges } from '../../src/standards/usb-pd-adjustable-supplies.ts';
import { requiredSupplies } from '../../src/standards/usb-pd-fixed-supplies.ts';

/** "5 V 3 A, 9 V 2.22 A" as a table prints it. */
function printed(watts: number): string {
  return requiredSupplies(watts)
    .map(({ volts, amps }) => `${volts} V ${Number(amps.toFixed(2))} A`)
    .join(', ');
}

describe('fixed supplies by rated power', () => {
  // USB PD R3.2 V1.1, Tables 10.2, 10.4 (65 W: 20 V 3.25 A) and 10.12; 20 W at 9 V is 2.22 A.
  it.each([
    [7.5, '5 V 1.5 A'],
    [15, '5 V 3 A'],
    [20, '5 V 3 A, 9 V 2.22 A'],
    [27, '5 V 3 A, 9 V 3 A'],
    [27.5, '5 V 3 A, 9 V 3 A, 15 V 1.83 A'],
    [45, '5 V 3 A, 9 V 3 A, 15 V 3 A'],
    [65, '5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 3.25 A'],
    [100, '5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A'],
    [108, '5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, 28 V 3.86 A'],
    [160, '5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, 28 V 5 A, 36 V 4.44 A'],
    [240, '5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, 28 V 5 A, 36 V 5 A, 48 V 5 A'],
  ])('%d W: %s', (watts, supplies) => {
    expect(printed(watts)).toBe(supplies);
  });
});

describe('adjustable supplies by rated power', () => {
  // Table 10.10 and the examples of 10.2.3.2.2.
  it.each([
    [15, []],
    [20, [{ nominal: 9, amps: 2.2 }]],
    [
      36,
      [
        { nominal: 9, amps: 3 },
        { nominal: 15, amps: 2.4 },
      ],
    ],
    [45, [{ nominal: 15, amps: 3 }]],
    [
      50,
      [
        { nominal: 15, amps: 3 },
        { nominal: 20, amps: 2.5 },
      ],
    ],
    [60, [{ nominal: 20, amps: 3 }]],
    [100, [{ nominal: 20, amps: 5 }]],
  ] as const)('PPS at %d W', (watts, ranges) => {
    expect(requiredRanges(watts)).toEqual(ranges);
  });

  it('round the current of PPS down to 50 mA', () => {
    expect([ppsAmps(65, 20), ppsAmps(20, 9), ppsAmps(33, 15)]).toEqual([3.25, 2.2, 2.2]);
  });

  it('end EPR AVS at 28, 36 or 48 V', () => {
    expect([140, 144, 180, 240].map(eprAvsTop)).toEqual([28, 36, 36, 48]);
  });
});
