import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dividePool, type Claim } from '../../src/sharing/pool-division.ts';

const claim = (watts: number, most = watts): Claim => ({ watts, most, isMeetable: most === watts });

describe('a pool divided between devices', () => {
  test('meets the smaller need in full and gives the other the rest', () => {
    expect(dividePool(15, [claim(5), claim(27)])).toEqual([5, 10]);
  });

  test('levels the fractions where neither need can be met', () => {
    expect(dividePool(15, [claim(20), claim(40)])).toEqual([5, 10]);
  });

  test('gives no device more than its offers carry, and the rest to the others', () => {
    expect(dividePool(15, [claim(20, 2), claim(40)])).toEqual([2, 13]);
  });

  test('gives nothing to a device that finds no voltage, and does not hold the others down for it', () => {
    expect(dividePool(15, [claim(20, 0), claim(30), claim(60)])).toEqual([0, 5, 10]);
  });

  test('is never beaten by a division in whole watts', () => {
    const watts = fc.integer({ min: 1, max: 20 });
    const claims = fc.array(
      watts.chain((need) => fc.record({ need: fc.constant(need), most: fc.integer({ min: 0, max: need }) })),
      { minLength: 2, maxLength: 3 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), claims, (pool, asked) => {
        const list = asked.map(({ need, most }) => claim(need, most));
        const exact = aims(dividePool(pool, list), list);
        for (const division of wholeWatts(pool, list)) {
          const tried = aims(division, list);
          const gap = exact.map((aim, place) => aim - (tried[place] ?? 0)).find((difference) => Math.abs(difference) > 1e-9) ?? 0;
          expect(gap, `${division.join(' + ')} W`).toBeGreaterThanOrEqual(0);
        }
      }),
      { seed: 20260303, numRuns: 60 },
    );
  });
});

/** Needs met, least fraction among devices that find a voltage, sum. */
function aims(division: readonly number[], claims: readonly Claim[]): number[] {
  const met = claims.filter(({ isMeetable, watts }, index) => isMeetable && (division[index] ?? 0) > watts - 1e-9).length;
  const fractions = claims.flatMap(({ watts, most }, index) => (most > 0 ? [(division[index] ?? 0) / watts] : []));
  return [met, Math.min(1, ...fractions), division.reduce((sum, watts) => sum + watts, 0)];
}

function wholeWatts(pool: number, claims: readonly Claim[]): number[][] {
  const [first, ...rest] = claims;
  if (first === undefined) return [[]];
  return Array.from({ length: Math.min(pool, first.most) + 1 }, (_, watts) => watts).flatMap((watts) =>
    wholeWatts(pool - watts, rest).map((others) => [watts, ...others]),
  );
}
