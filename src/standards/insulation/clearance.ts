import { tabulated60664 } from './sources.ts';
import type { Source } from '../../values/value.ts';

/** Pollution degree: 1 sealed, 2 inside of ordinary equipment, 3 conductive dust or damp, 4 outdoors. */
export type PollutionDegree = 1 | 2 | 3 | 4;

/** A voltage in V and a distance in mm. */
type Point = readonly [volts: number, millimetres: number];

/** Clearance for an impulse, inhomogeneous field, up to 2000 m, without the floor of the pollution degree. */
export const IMPULSE_CLEARANCE: { readonly points: readonly Point[]; readonly source: Source } = {
  points: [
    [330, 0.01],
    [400, 0.02],
    [500, 0.04],
    [600, 0.06],
    [800, 0.1],
    [1000, 0.15],
    [1200, 0.25],
    [1500, 0.5],
    [2000, 1],
    [2500, 1.5],
    [3000, 2],
    [4000, 3],
    [5000, 4],
    [6000, 5.5],
    [8000, 8],
    [10_000, 11],
    [12_000, 14],
    [15_000, 18],
    [20_000, 25],
  ],
  source: tabulated60664('table F.2, inhomogeneous field'),
};

/** Least clearance of a pollution degree, mm. */
const LEAST_CLEARANCE: Readonly<Record<PollutionDegree, number>> = { 1: 0, 2: 0.2, 3: 0.8, 4: 1.6 };

/** Clearance for a steady or recurring peak voltage, inhomogeneous field, up to 2000 m. */
export const RECURRING_CLEARANCE: { readonly points: readonly Point[]; readonly source: Source } = {
  points: [
    [330, 0.01],
    [400, 0.02],
    [500, 0.04],
    [600, 0.06],
    [800, 0.13],
    [1000, 0.26],
    [1200, 0.42],
    [1500, 0.76],
    [2000, 1.27],
    [2500, 1.8],
    [3000, 2.4],
    [4000, 3.8],
    [5000, 5.7],
    [6000, 7.9],
  ],
  source: tabulated60664('table F.8, inhomogeneous field; up to 30 kHz'),
};

/** Clearance, mm, for an impulse in volts: the row that covers it; null above the table. */
export function impulseClearance(volts: number, pollution: PollutionDegree): number | null {
  const row = IMPULSE_CLEARANCE.points.find(([upTo]) => volts <= upTo);
  return row === undefined ? null : Math.max(row[1], LEAST_CLEARANCE[pollution]);
}

/** Clearance, mm, for a steady or recurring peak in volts: linear between the rows; null above the table. */
export function recurringClearance(peak: number): number | null {
  return between(RECURRING_CLEARANCE.points, peak);
}

/** Linear between points, the first one below them; null above them. */
export function between(points: readonly Point[], at: number): number | null {
  const index = points.findIndex(([upTo]) => at <= upTo);
  const high = points[index];
  if (high === undefined) return null;
  const low = points[index - 1];
  return low === undefined ? high[1] : low[1] + ((high[1] - low[1]) * (at - low[0])) / (high[0] - low[0]);
}
