import { describe, expect, it } from 'vitest';
import { plugRows } from '../../src/render/plug-rows.ts';
import type { PortShare, SetRow, ShareMatrix } from '../../src/sharing/share-matrix.ts';
import type { Value } from '../../src/values/value.ts';

const watts = (power: number): Value<'power'> => ({
  dimension: 'power',
  low: power,
  nominal: power,
  high: power,
  significant: 3,
  origin: { evidence: 'measured', written: `${power} W`, at: 'sharing' },
});

/** A known set: own shares by port name, pools by names joined with a plus. */
function set(shares: Readonly<Record<string, number>>, total = 100): SetRow {
  const list = Object.entries(shares).flatMap(([names, power]): PortShare[] =>
    names.split('+').map((port) => ({ port, power: watts(power), pool: names.split('+') })),
  );
  const sum = Object.values(shares).reduce((one, other) => one + other, 0);
  const ports = list.map((share) => share.port);
  return {
    ports,
    key: ports.join(' + '),
    order: null,
    standing: 'known',
    impliedBy: null,
    shares: list,
    sum: watts(sum),
    unused: watts(total - sum),
    path: null,
  };
}

function matrix(ports: readonly string[], rows: readonly SetRow[]): ShareMatrix {
  return { ports, rows, counts: { known: rows.length, implied: 0, missing: 0 }, capped: false, isAssured: false, alike: [], falls: [] };
}

describe('what to plug where', () => {
  const three = matrix(
    ['C1', 'C2', 'A1'],
    [
      set({ C1: 100 }),
      set({ C2: 65 }),
      set({ A1: 18 }),
      set({ C1: 65, C2: 35 }),
      set({ C1: 80, A1: 18 }),
      set({ 'C2+A1': 24 }),
      set({ C1: 65, 'C2+A1': 24 }),
    ],
  );

  it('sends one device to the port with the most power alone', () => {
    expect(plugRows(three)[0]).toMatchObject({
      need: 'One device',
      ports: ['C1'],
      power: '100\u00a0W',
      remark: 'The only port with this power.',
    });
  });

  it('gives the pair that leaves least unused, and says what is left', () => {
    expect(plugRows(three)[1]).toMatchObject({
      need: 'Two devices',
      ports: ['C1', 'C2'],
      power: '65 + 35\u00a0W',
      remark: 'Nothing of the total is left over.',
    });
  });

  it('counts a pool once and names the ports that share it', () => {
    const all = plugRows(three).find((row) => row.need === 'All in use');
    expect(all?.power).toBe('65 + 24\u00a0W');
    expect(all?.remark).toContain('C2 and A1 share 24 W.');
  });

  it('offers the pair with the strongest weaker port where that is another pair', () => {
    const rows = plugRows(matrix(['C1', 'C2', 'C3'], [set({ C1: 100 }), set({ C1: 80, C2: 20 }), set({ C2: 45, C3: 45 })]));
    expect(rows.find((row) => row.need === 'Two alike')).toMatchObject({ ports: ['C2', 'C3'], remark: '45 W at least on each.' });
  });

  it('says so when the shares promise more than the total', () => {
    expect(plugRows(matrix(['C1', 'A1'], [set({ C1: 100 }), set({ C1: 85, A1: 18 })]))[1]?.remark).toBe('3 W above the total.');
  });

  it('does not invent a power for the set that nobody measured', () => {
    const unknown: SetRow = { ...set({ C1: 1, C2: 1, A1: 1 }), standing: 'missing', shares: [], sum: null, unused: null };
    expect(plugRows(matrix(['C1', 'C2', 'A1'], [set({ C1: 100 }), unknown])).at(-1)).toMatchObject({
      power: '–',
      remark: 'Not known, measure next.',
    });
  });
});
