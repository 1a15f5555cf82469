import { describe, expect, it } from 'vitest';
import { reading } from './reading.ts';

const PORTS = 'ports: { C1: { connector: USB-C }, C2: { connector: USB-C }, A1: { connector: USB-A } }\n';

/** Shares of the first allocation as "C1 45, C2+A1 15". */
function sharesOf(allocations: string): { readonly shares: string; readonly findings: readonly string[] } {
  const { entry, findings } = reading(`${PORTS}sharing: { allocations: ${allocations} }`);
  const first = entry.sharing?.allocations[0];
  return { shares: (first?.shares ?? []).map(({ ports, power }) => `${ports.join('+')} ${power.nominal}`).join(', '), findings };
}

describe('an allocation says what each port gets', () => {
  it.each([
    ['{ C1: 100 W }', 'C1 100'],
    ['{ C1 + C2: 50 W + 50 W }', 'C1 50, C2 50'],
    ['{ C1 + C2: 37.5 W each }', 'C1 37.5, C2 37.5'],
    ['{ C2 + A1: 15 W shared }', 'C2+A1 15'],
    ['{ C2+A: 15 W Max }', 'C2+A1 15'],
    ['{ C1 + (C2 + A1): 45 W + 15 W }', 'C1 45, C2+A1 15'],
    ['{ USB-C1+USB-A: 45W+18W Max }', 'C1 45, A1 18'],
    ['["USB-C1+USB-A: 45W+18W Max"]', 'C1 45, A1 18'],
    ['{ C1 + C2: { shares: 60 W + 15 W, asked: 60 W + 45 W } }', 'C1 60, C2 15'],
  ])('%s', (allocations, expected) => {
    expect(sharesOf(allocations)).toEqual({ shares: expected, findings: [] });
  });

  it('reads the printed "C1/C2: 100W" as each of the two alone', () => {
    const { entry } = reading(`${PORTS}sharing: { allocations: { C1/C2: 100W } }`);
    expect(entry.sharing?.allocations.map(({ ports }) => ports)).toEqual([['C1'], ['C2']]);
  });
});

describe('"C1 + C2 + A: 45W + 15W" has two powers for three ports', () => {
  it('is refused where nothing says which two share, with the way to write it', () => {
    const { shares, findings } = sharesOf('{ C1 + C2 + A: 45W + 15W }');
    expect(shares).toBe('');
    expect(findings).toEqual(['shares-mismatch 2:40 C1 + C2 + A1 are 3 and "45W + 15W" has 2 powers.']);
  });

  it('is read through the pool that another line names', () => {
    const { entry, findings } = reading(`${PORTS}sharing: { allocations: { C2+A: 15W Max, C1+C2+A: 45W+15W } }`);
    expect(findings).toEqual([]);
    expect(entry.sharing?.allocations[1]?.shares.map(({ ports }) => ports)).toEqual([['C1'], ['C2', 'A1']]);
  });
});

describe('where the order of plugging matters', () => {
  it('is said in the key', () => {
    const { entry } = reading(`${PORTS}sharing: { allocations: { C1 then C2: 65 W + 30 W, C2 then C1: 45 W + 45 W } }`);
    expect(entry.sharing?.allocations.map(({ order, ports }) => [order, ports])).toEqual([
      [
        ['C1', 'C2'],
        ['C1', 'C2'],
      ],
      [
        ['C2', 'C1'],
        ['C2', 'C1'],
      ],
    ]);
  });

  it('or beside the shares, several under one key', () => {
    const { entry, findings } = reading(
      `${PORTS}sharing:\n  allocations:\n    C1 + C2:\n      - { shares: 65 W + 30 W, order: [C1, C2] }\n      - { shares: 45 W + 45 W, order: "C2, C1", evidence: printed }`,
    );
    expect(findings).toEqual([]);
    expect(entry.sharing?.allocations.map(({ order, evidence }) => [order, evidence])).toEqual([
      [['C1', 'C2'], 'measured'],
      [['C2', 'C1'], 'printed'],
    ]);
  });
});

describe('sharing without a matrix', () => {
  it('holds the steps of each port where combinations are not known', () => {
    // Steps as a trade article states them for a 100 W four-port charger (Power Systems Design, 2023-08-01).
    const { entry, findings } = reading(
      `${PORTS}sharing: { total: 100 W, steps: { C1: "100 W, 65 W, 45 W", C2: [100 W, 30 W, 65 W], A1: [30 W, 18 W] } }`,
    );
    expect(findings).toEqual([]);
    expect(entry.sharing?.steps['C1']?.map(({ nominal }) => nominal)).toEqual([100, 65, 45]);
  });

  it('holds a policy with what each port keeps', () => {
    const { entry, findings } = reading(
      `${PORTS}sharing: { total: 75 W, policy: shared, minimum: 15 W, priority: last plugged, on new plug: { C1: drops, A1: keeps } }`,
    );
    expect(findings).toEqual([]);
    expect(entry.sharing).toMatchObject({
      policy: 'shared',
      priority: 'last plugged',
      onNewPlug: null,
      onNewPlugAt: { C1: 'drops', A1: 'keeps' },
    });
    expect(entry.sharing?.minimum['A1']?.nominal).toBe(15);
  });
});
