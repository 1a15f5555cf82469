import { between } from './clearance.ts';
import { tabulated60664 } from './sources.ts';
import type { Source } from '../../values/value.ts';

/** Material group by comparative tracking index: I from 600, II from 400, IIIa from 175, IIIb from 100. */
export type MaterialGroup = 'I' | 'II' | 'IIIa' | 'IIIb';

/** Least tracking index of each group, highest first. */
const MATERIAL_GROUPS: readonly { readonly group: MaterialGroup; readonly from: number }[] = [
  { group: 'I', from: 600 },
  { group: 'II', from: 400 },
  { group: 'IIIa', from: 175 },
  { group: 'IIIb', from: 100 },
];

interface CreepageRow {
  /** Working voltage, V rms. */
  readonly volts: number;
  /** Basic insulation, pollution degree 2, mm. */
  readonly I: number;
  readonly II: number;
  readonly III: number;
  /** Printed wiring, not for group IIIb, mm; null above 1000 V. */
  readonly board: number | null;
}

function row(volts: number, I: number, II: number, III: number, board: number | null): CreepageRow {
  return { volts, I, II, III, board };
}

/** Creepage of basic insulation at pollution degree 2. The other degrees were read at 250 V only and are left out. */
export const CREEPAGE: { readonly rows: readonly CreepageRow[]; readonly source: Source } = {
  rows: [
    row(10, 0.4, 0.4, 0.4, 0.04),
    row(12.5, 0.42, 0.42, 0.42, 0.04),
    row(16, 0.45, 0.45, 0.45, 0.04),
    row(20, 0.48, 0.48, 0.48, 0.04),
    row(25, 0.5, 0.5, 0.5, 0.04),
    row(32, 0.53, 0.53, 0.53, 0.04),
    row(40, 0.56, 0.8, 1.1, 0.04),
    row(50, 0.6, 0.85, 1.2, 0.04),
    row(63, 0.63, 0.9, 1.25, 0.063),
    row(80, 0.67, 0.95, 1.3, 0.1),
    row(100, 0.71, 1, 1.4, 0.16),
    row(125, 0.75, 1.05, 1.5, 0.25),
    row(160, 0.8, 1.1, 1.6, 0.4),
    row(200, 1, 1.4, 2, 0.63),
    row(250, 1.25, 1.8, 2.5, 1),
    row(320, 1.6, 2.2, 3.2, 1.6),
    row(400, 2, 2.8, 4, 2),
    row(500, 2.5, 3.6, 5, 2.5),
    row(630, 3.2, 4.5, 6.3, 3.2),
    row(800, 4, 5.6, 8, 4),
    row(1000, 5, 7.1, 10, 5),
    row(1250, 6.3, 9, 12.5, null),
  ],
  source: tabulated60664('table F.5, pollution degree 2'),
};

/** Creepage by an older family of standards, group III, pollution degree 2: V rms and mm. Interpolate, round to 0.1 mm. */
export const OLDER_CREEPAGE: { readonly points: readonly (readonly [volts: number, millimetres: number])[]; readonly source: Source } = {
  points: [
    [50, 1.2],
    [100, 1.4],
    [125, 1.5],
    [150, 1.6],
    [200, 2],
    [250, 2.5],
    [300, 3.2],
    [400, 4],
    [600, 6.3],
    [800, 8],
    [1000, 10],
  ],
  source: {
    title: 'ECMA-287, 1st edition (June 1999)',
    section: 'table 3.5, as transcribed; the family of IEC 60950-1',
    standing: 'secondary',
  },
};

/**
 * Creepage of basic insulation at pollution degree 2, mm, linear between the rows.
 *
 * @param rms working voltage, V rms
 * @param onBoard whether the distance runs over printed wiring
 * @returns null above the table, and for printed wiring on group IIIb
 */
export function basicCreepage(rms: number, group: MaterialGroup, onBoard = false): number | null {
  if (onBoard && group === 'IIIb') return null;
  const column = group === 'I' || group === 'II' ? group : 'III';
  const points = CREEPAGE.rows.flatMap(({ volts, board, ...materials }) => {
    const millimetres = onBoard ? board : materials[column];
    return millimetres === null ? [] : [[volts, millimetres] as const];
  });
  return between(points, rms);
}

/** Creepage by the older family, basic insulation, group III, pollution degree 2, mm; null above the table. */
export function olderCreepage(rms: number): number | null {
  return between(OLDER_CREEPAGE.points, rms);
}

/** Group of a comparative tracking index; null below 100. */
export function materialGroup(trackingIndex: number): MaterialGroup | null {
  return MATERIAL_GROUPS.find(({ from }) => trackingIndex >= from)?.group ?? null;
}
