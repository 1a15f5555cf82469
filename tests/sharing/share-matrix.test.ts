import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, Sharing } from '../../src/entry/entry.ts';
import { shareMatrix } from '../../src/sharing/share-matrix-of.ts';
import type { SetRow, ShareMatrix } from '../../src/sharing/share-matrix.ts';
import { setsToMeasureNext } from '../../src/sharing/sets-to-measure-next.ts';
import { allocation, entryWithPorts, outputPort, sharing, watts } from './entry-with-ports.ts';

function matrixOf(entry: Entry): ShareMatrix {
  const matrix = shareMatrix(entry);
  if (matrix === null) throw new Error('the entry has output ports');
  return matrix;
}

function rowOf(matrix: ShareMatrix, key: string): SetRow {
  const row = matrix.rows.find((candidate) => candidate.key === key);
  if (row === undefined) throw new Error(`no row ${key}`);
  return row;
}

function wattsOf(row: SetRow): Record<string, number> {
  return Object.fromEntries(row.shares.map((share) => [share.port, share.power.nominal]));
}

function total(power: string): Pick<Sharing, 'total'> {
  return { total: { quantity: watts(power), evidence: 'printed', path: ['sharing', 'total'] } };
}

describe('the published two-port examples', () => {
  // Texas Instruments application note SLVAFG6B, "System power management", assured capacity, section 3.2.1: 105 W, A 60 W, B 45 W.
  test('an assured policy: 60 W and 45 W alone and together, 105 W in all, nothing unused', () => {
    const entry = entryWithPorts([outputPort('A', '60 W'), outputPort('B', '45 W')], sharing([], { policy: 'assured', ...total('105 W') }));
    const both = rowOf(matrixOf(entry), 'A + B');
    expect(wattsOf(both)).toEqual({ A: 60, B: 45 });
    expect(both).toMatchObject({ standing: 'implied', impliedBy: 'assured' });
    expect(both.sum?.nominal).toBe(105);
    expect(both.unused?.nominal).toBe(0);
  });

  // The same note, assured capacity, scenario 1 and 2: A takes 27 W alone, then 27 W beside 45 W.
  test('what a port was seen to take wins over its own limit', () => {
    const rows = [allocation({ A: '27 W' }, { evidence: 'measured' }), allocation({ A: '27 W', B: '45 W' }, { evidence: 'measured' })];
    const matrix = matrixOf(entryWithPorts([outputPort('A', '60 W'), outputPort('B', '45 W')], sharing(rows, total('105 W'))));
    expect(wattsOf(rowOf(matrix, 'A'))).toEqual({ A: 27 });
    expect(wattsOf(rowOf(matrix, 'B'))).toEqual({ B: 45 });
    expect(rowOf(matrix, 'A + B').sum?.nominal).toBe(72);
    expect(rowOf(matrix, 'A + B').unused?.nominal).toBe(33);
  });

  // The same note, section 5.2, fair share: 75 W system, A and B at most 60 W, 15 W at least: both ask 60 W, each gets 37.5 W.
  test('fair share: 60 W alone, 37.5 W each together, 75 W in all', () => {
    const ports = [outputPort('A', '60 W'), outputPort('B', '60 W')];
    const matrix = matrixOf(
      entryWithPorts(ports, sharing([allocation({ A: '37.5 W', B: '37.5 W' })], { policy: 'shared', ...total('75 W') })),
    );
    expect(wattsOf(rowOf(matrix, 'A'))).toEqual({ A: 60 });
    expect(rowOf(matrix, 'A').unused?.nominal).toBe(15);
    const both = rowOf(matrix, 'A + B');
    expect(both.sum).toMatchObject({ nominal: 75, significant: 3 });
    expect(both.unused?.nominal).toBe(0);
    expect(matrix.counts).toEqual({ known: 3, implied: 0, missing: 0 });
    expect(matrix.falls.map((fall) => [fall.highest?.nominal, fall.lowest?.nominal])).toEqual([
      [60, 37.5],
      [60, 37.5],
    ]);
  });

  // The same note, fair share: "one above, one below: the lower gets its wish, the other the remainder": 60 and 15 W of 75 W.
  test('two orders of plugging may give one set two rows', () => {
    const rows = [allocation({ A: '60 W', B: '15 W' }, { order: ['A', 'B'] }), allocation({ A: '15 W', B: '60 W' }, { order: ['B', 'A'] })];
    const matrix = matrixOf(entryWithPorts([outputPort('A', '60 W'), outputPort('B', '60 W')], sharing(rows, total('75 W'))));
    expect(matrix.rows.filter((row) => row.key === 'A + B').map((row) => [row.order?.join(' then '), wattsOf(row)])).toEqual([
      ['A then B', { A: 60, B: 15 }],
      ['B then A', { A: 15, B: 60 }],
    ]);
    expect(matrix.counts).toEqual({ known: 3, implied: 0, missing: 0 });
    expect(matrix.falls[0]).toMatchObject({ highest: { nominal: 60 }, lowest: { nominal: 15 } });
  });
});

describe('what is known, implied and missing', () => {
  const ports = [outputPort('C1', '100 W'), outputPort('C2', '100 W'), outputPort('C3', '30 W'), outputPort('A1', '18 W')];
  const rows = [allocation({ C1: '65 W', C3: '30 W' }), allocation({ C1: '50 W', C2: '50 W' }), allocation({ 'C3/A1': '15 W' })];
  const matrix = matrixOf(entryWithPorts(ports, sharing(rows, { alike: [['C1', 'C2']], ...total('100 W') })));

  test('four ports have fifteen sets, listed by count and then in the entry’s order', () => {
    expect(matrix.rows.map((row) => row.key)).toEqual([
      'C1', 'C2', 'C3', 'A1',
      'C1 + C2', 'C1 + C3', 'C1 + A1', 'C2 + C3', 'C2 + A1', 'C3 + A1',
      'C1 + C2 + C3', 'C1 + C2 + A1', 'C1 + C3 + A1', 'C2 + C3 + A1',
      'C1 + C2 + C3 + A1',
    ]); // prettier-ignore
    expect(matrix.counts).toEqual({ known: 7, implied: 1, missing: 7 });
  });

  test('alike ports imply the set they would exchange into, with the evidence of the row that implies it', () => {
    const implied = rowOf(matrix, 'C2 + C3');
    expect(implied).toMatchObject({ standing: 'implied', impliedBy: 'C1 + C3', path: null });
    expect(wattsOf(implied)).toEqual({ C2: 65, C3: 30 });
    expect(implied.shares[0]?.power.origin).toEqual({ evidence: 'printed', written: '65 W', at: 'sharing.allocations.C1 + C3' });
  });

  test('a pool counts once in the sum and names all who draw on it', () => {
    const pooled = rowOf(matrix, 'C3 + A1');
    expect(pooled.shares.map((share) => [share.port, share.power.nominal, share.pool])).toEqual([
      ['C3', 15, ['C3', 'A1']],
      ['A1', 15, ['C3', 'A1']],
    ]);
    expect(pooled.sum?.nominal).toBe(15);
    expect(pooled.unused?.nominal).toBe(85);
  });

  test('seven missing sets take five measurements, fewest ports first', () => {
    expect(setsToMeasureNext(matrix).map((next) => next.settles)).toEqual([
      ['C1 + A1', 'C2 + A1'],
      ['C1 + C2 + C3'],
      ['C1 + C2 + A1'],
      ['C1 + C3 + A1', 'C2 + C3 + A1'],
      ['C1 + C2 + C3 + A1'],
    ]);
  });

  test('an input port has no share; a device without outputs has no matrix', () => {
    const inlet = outputPort('IN', null, { direction: 'input' });
    expect(matrixOf(entryWithPorts([inlet, ...ports], null)).ports).toEqual(['C1', 'C2', 'C3', 'A1']);
    expect(shareMatrix(entryWithPorts([inlet], null))).toBeNull();
  });

  test('nine ports: only the given sets are listed, and the rest is still counted', () => {
    const nine = Array.from({ length: 9 }, (_, index) => outputPort(`C${index + 1}`, '20 W'));
    const large = matrixOf(entryWithPorts(nine, sharing([allocation({ C1: '20 W', C9: '20 W' })])));
    expect(large.capped).toBe(true);
    expect(large.rows).toHaveLength(10);
    expect(large.counts).toEqual({ known: 10, implied: 0, missing: 501 });
    expect(setsToMeasureNext(large)).toEqual([]);
  });
});

describe('properties of every matrix', () => {
  const names = ['C1', 'C2', 'C3', 'C4', 'A1'];
  /** Up to five ports, any sets of them with a share of their own each, any groups of alike ports. */
  const anEntry = fc
    .record({
      count: fc.integer({ min: 1, max: 5 }),
      sets: fc.array(fc.array(fc.record({ port: fc.nat(4), watts: fc.integer({ min: 1, max: 100 }) }), { minLength: 1, maxLength: 5 }), {
        maxLength: 8,
      }),
      alike: fc.array(fc.array(fc.nat(4), { maxLength: 3 }), { maxLength: 2 }),
      limits: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    })
    .map(({ count, sets, alike, limits }) => (rename: (port: string) => string): Entry => {
      const named = (index: number): string => rename(names[index % count] ?? 'C1');
      const ports = names.slice(0, count).map((port, index) => outputPort(rename(port), limits[index] === true ? '60 W' : null));
      const rows = sets.map((set) => allocation(Object.fromEntries(set.map((share) => [named(share.port), `${share.watts} W`]))));
      return entryWithPorts(ports, sharing(rows, { alike: alike.map((group) => group.map(named)) }));
    });
  const fixed = { seed: 20260314, numRuns: 300 };
  const same = (port: string): string => port;

  test('known, implied and missing sets add up to 2^n − 1, and each set is listed', () => {
    fc.assert(
      fc.property(anEntry, (build) => {
        const matrix = matrixOf(build(same));
        const sets = 2 ** matrix.ports.length - 1;
        expect(matrix.counts.known + matrix.counts.implied + matrix.counts.missing).toBe(sets);
        expect(new Set(matrix.rows.map((row) => row.key)).size).toBe(sets);
      }),
      fixed,
    );
  });

  test('giving the implied rows as known ones implies nothing more', () => {
    fc.assert(
      fc.property(anEntry, (build) => {
        const entry = build(same);
        const once = matrixOf(entry);
        const filled = once.rows.filter((row) => row.standing !== 'missing');
        const rows = filled.map((row) =>
          allocation(Object.fromEntries(row.shares.map((share) => [share.port, `${share.power.nominal} W`]))),
        );
        const twice = matrixOf(entryWithPorts(entry.ports, sharing(rows, { alike: once.alike })));
        expect(twice.rows.map((row) => [row.key, wattsOf(row)])).toEqual(once.rows.map((row) => [row.key, wattsOf(row)]));
        expect(twice.counts.implied).toBe(0);
      }),
      fixed,
    );
  });

  test('other names for the ports give the same matrix under those names', () => {
    const rename = (port: string): string => `${port} left`;
    fc.assert(
      fc.property(anEntry, (build) => {
        const plain = matrixOf(build(same)).rows.map((row) => [
          row.ports.map(rename).join(' + '),
          row.standing,
          row.shares.map((share) => share.power.nominal),
        ]);
        expect(matrixOf(build(rename)).rows.map((row) => [row.key, row.standing, row.shares.map((share) => share.power.nominal)])).toEqual(
          plain,
        );
      }),
      fixed,
    );
  });

  test('another order of the ports in the entry leaves the same sets known, implied and missing', () => {
    fc.assert(
      fc.property(anEntry, (build) => {
        const entry = build(same);
        const standings = (matrix: ShareMatrix): string[] =>
          matrix.rows.map((row) => `${[...row.ports].sort().join()} ${row.standing}`).sort();
        expect(standings(matrixOf({ ...entry, ports: entry.ports.toReversed() }))).toEqual(standings(matrixOf(entry)));
      }),
      fixed,
    );
  });

  test('measuring what is proposed leaves nothing missing, and leaving one proposal out leaves something missing', () => {
    fc.assert(
      fc.property(anEntry, (build) => {
        const entry = build(same);
        const block = entry.sharing ?? sharing([]);
        const next = setsToMeasureNext(matrixOf(entry));
        const measured = next.map((set) => allocation(Object.fromEntries(set.ports.map((port) => [port, '5 W']))));
        const missingAfter = (rows: typeof measured): number =>
          matrixOf({ ...entry, sharing: { ...block, allocations: [...block.allocations, ...rows] } }).counts.missing;
        expect(missingAfter(measured)).toBe(0);
        if (measured.length > 0) expect(missingAfter(measured.slice(1))).toBe(next[0]?.settles.length);
      }),
      fixed,
    );
  });
});
