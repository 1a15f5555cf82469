import { describe, expect, test } from 'vitest';
import { saidOf } from '../demo/entries-in.ts';
import { design } from './designs.ts';

function sumAt(slug: string, key: string): number | undefined {
  return design(slug).derived.shares?.rows.find((row) => row.key === key)?.sum?.nominal;
}

// Texas Instruments, SLVAFG6B, sections 3.2, 3.2.1, 5.1 and 5.2.
describe('assured capacity', () => {
  test('60 W and 45 W at once are the 105 W of the system (section 5.1)', () => {
    expect(sumAt('slvafg6-assured', 'A + B')).toBe(105);
    expect(design('slvafg6-assured').entry.sharing?.total?.quantity.nominal).toBe(105);
  });
});

describe('shared capacity with fair share', () => {
  const { entry } = design('slvafg6-shared');
  const minimum = Object.values(entry.sharing?.minimum ?? {}).map((quantity) => quantity.nominal);
  const total = entry.sharing?.total?.quantity.nominal ?? 0;

  test('75 W less two minima of 15 W leave a reserve of 45 W (section 5.2)', () => {
    expect(minimum).toEqual([15, 15]);
    expect(total - minimum.reduce((sum, watts) => sum + watts, 0)).toBe(45);
  });

  test('half of the reserve on top of the minimum guarantees 37.5 W, twice of which is the total (section 5.2)', () => {
    expect(15 + 45 / 2).toBe(37.5);
    const row = design('slvafg6-shared').derived.shares?.rows.find((candidate) => candidate.key === 'A + B');
    expect(row?.shares.map(({ power }) => power.nominal)).toEqual([37.5, 37.5]);
    expect(sumAt('slvafg6-shared', 'A + B')).toBe(75);
  });

  test('two ports of 60 W on 75 W are in order', () => {
    expect(entry.ports.reduce((sum, port) => sum + (port.power?.quantity.nominal ?? 0), 0)).toBe(120);
    expect(saidOf(design('slvafg6-shared'), ['error', 'warning'])).toEqual([]);
  });
});

describe('steps without combinations', () => {
  const { entry, derived } = design('four-port-steps');

  test('each port alone has its own power, the eleven combinations are open, and the steps are kept (trade article of 2023-08-01)', () => {
    expect(derived.shares?.counts).toEqual({ known: 4, implied: 0, missing: 11 });
    expect(Object.entries(entry.sharing?.steps ?? {}).map(([port, steps]) => [port, steps.map((step) => step.nominal)])).toEqual([
      ['C1', [100, 65, 45]],
      ['C2', [100, 30, 65]],
      ['C3', [30]],
      ['A1', [30, 18]],
    ]);
  });
});

describe('a pin that halves', () => {
  test('36 W alone, 18 W each with both in use (SSZTB83)', () => {
    expect(sumAt('ssztb83-halving', 'A')).toBe(36);
    expect(sumAt('ssztb83-halving', 'A + B')).toBe(36);
  });
});
