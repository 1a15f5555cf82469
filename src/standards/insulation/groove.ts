import { tabulated60664 } from './sources.ts';
import type { PollutionDegree } from './clearance.ts';
import type { Source } from '../../values/value.ts';

/** Least width from which a groove or slot counts in the creepage path, mm. */
export const GROOVE_WIDTHS: { readonly byPollution: Readonly<Record<1 | 2 | 3, number>>; readonly source: Source } = {
  byPollution: { 1: 0.25, 2: 1, 3: 1.5 },
  source: tabulated60664('6.8, width X'),
};

/**
 * Width, mm, from which a groove counts; where the whole clearance is below 3 mm one third of it is enough.
 *
 * @returns null for pollution degree 4, for which no width was read
 */
export function grooveWidth(pollution: PollutionDegree, clearance: number): number | null {
  if (pollution === 4) return null;
  const width = GROOVE_WIDTHS.byPollution[pollution];
  return clearance < 3 ? Math.min(width, clearance / 3) : width;
}
