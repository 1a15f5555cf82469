import { describe, expect, test } from 'vitest';
import { design, known, offeredWatts } from './designs.ts';
import { expectPrinted } from './prints-as.ts';

// Injoinic, IP6557 data sheet V1.11, November 2023, and application note V1.00, 2023-03-01.
describe('the 140 W car charger', () => {
  const { entry, derived } = design('ip6557-140w-car');

  test('its offers are 15, 27, 36, 45, 100 and 140 W (application note)', () => {
    expect(offeredWatts(entry, 'C1')).toEqual([15, 27, 36, 45, 100, 140]);
  });

  test('its rating depends on the input: 100 W from 12 V, 140 W from 20 V (application note)', () => {
    expect(entry.nameplate.totalAtInput.map(({ from, power }) => [from.nominal, power.nominal])).toEqual([
      [12, 100],
      [20, 140],
    ]);
    expect(known(derived.ratedPower)).toBe(140);
  });

  test('3.8 mA idle at 24 V are the 91 mW of its standby row (data sheet)', () => {
    const idle = entry.claims.find((claim) => claim.of === 'idle current');
    const [standby] = entry.measurements.filter((point) => point.subject === 'standby');
    expectPrinted((idle?.quantity?.nominal ?? 0) * 24 * 1000, '91', 'electrical characteristics: 3.8 mA at 24 V');
    expect(standby?.value.quantity.nominal).toBe(0.091);
  });

  test('28 V on a capacitor of more than 35 V is at most 0.80 of its rating (section 14)', () => {
    const capacitor = entry.parts.find((part) => part.references.includes('C7'));
    const voltage = capacitor?.rating?.quantities.find((quantity) => quantity.dimension === 'voltage');
    expect(voltage?.bound).toBe('above');
    expectPrinted(28 / (voltage?.nominal ?? 0), '0.80', 'section 14: more than 35 V');
  });

  test('50 mV per ampere add the 150 mV of its 3 A offers', () => {
    const drop = entry.stages.find((stage) => stage.id === 'main')?.parameters['line drop'];
    expectPrinted((drop?.quantity.nominal ?? 0) * 3 * 1000, '150', 'application note');
  });

  test('a fuse without a value and switches without a number are no errors', () => {
    expect(entry.parts.find((part) => part.references.includes('F1'))?.rating).toBeNull();
    expect(entry.parts.find((part) => part.references.includes('Q1'))?.number).toBeNull();
  });
});

describe('its build with two ports', () => {
  test('both in use share 5 V × 4.8 A = 24 W (application note)', () => {
    const row = design('ip6557-two-port').derived.shares?.rows.find((candidate) => candidate.key === 'C1 + A1');
    expect(row?.sum?.nominal).toBe(24);
    expect(row?.shares.map(({ pool }) => pool)).toEqual([
      ['C1', 'A1'],
      ['C1', 'A1'],
    ]);
  });
});
