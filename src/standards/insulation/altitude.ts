import { between } from './clearance.ts';
import { tabulated60664 } from './sources.ts';
import type { Source } from '../../values/value.ts';

/** Factor on the clearance by altitude in metres; creepage is not touched. */
export const ALTITUDE_FACTORS: { readonly points: readonly (readonly [metres: number, factor: number])[]; readonly source: Source } = {
  points: [
    [2000, 1],
    [3000, 1.14],
    [4000, 1.29],
    [5000, 1.48],
    [6000, 1.7],
    [7000, 1.95],
    [8000, 2.25],
    [9000, 2.62],
    [10_000, 3.02],
    [15_000, 6.67],
    [20_000, 14.5],
  ],
  source: tabulated60664('table A.2'),
};

/** Factor on the clearance at an altitude in metres, linear between the rows; null above the table. */
export function altitudeFactor(metres: number): number | null {
  return between(ALTITUDE_FACTORS.points, metres);
}
