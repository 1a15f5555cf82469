import type { Source, Standing } from '../values/value.ts';

/** How long an accessible surface is touched in use. */
export type TouchDuration = 'held' | 'up to a minute' | 'up to ten seconds' | 'below one second';
export type TouchMaterial = 'metal' | 'glass' | 'plastic' | 'wood';

/** A temperature in degrees Celsius with the standing of that one cell. */
interface TouchLimit {
  readonly celsius: number;
  readonly standing: Standing;
}

interface TouchRow {
  readonly duration: TouchDuration;
  readonly limits: Readonly<Record<TouchMaterial, TouchLimit>>;
}

function fromMemory(celsius: number): TouchLimit {
  return { celsius, standing: 'memory' };
}

function quoted(celsius: number): TouchLimit {
  return { celsius, standing: 'secondary' };
}

function limits(metal: number, glass: number, plastic: TouchLimit, wood: number): TouchRow['limits'] {
  return { metal: fromMemory(metal), glass: fromMemory(glass), plastic, wood: fromMemory(wood) };
}

/** Class TS1 of the touch-temperature table, at 25 °C room as measured, not scaled to the rated ambient. */
export const TOUCH_TEMPERATURES: { readonly rows: readonly TouchRow[]; readonly source: Source } = {
  rows: [
    { duration: 'held', limits: limits(48, 48, quoted(48), 48) },
    { duration: 'up to a minute', limits: limits(51, 56, fromMemory(60), 60) },
    { duration: 'up to ten seconds', limits: limits(60, 71, quoted(77), 107) },
    { duration: 'below one second', limits: limits(70, 85, quoted(94), 140) },
  ],
  source: {
    title: 'IEC 62368-1, table 38, class TS1',
    section:
      'plastic held, touched for up to ten seconds and below one second as quoted in the archive of the IEEE product-safety list; the rest from memory',
    standing: 'secondary',
    url: 'https://www.mail-archive.com/emc-pstc@listserv.ieee.org/msg77021.html',
  },
};

/** Limit for a surface, with the standing of that cell. A limit from memory never decides an error. */
export function touchLimit(material: TouchMaterial, duration: TouchDuration): TouchLimit | null {
  return TOUCH_TEMPERATURES.rows.find((row) => row.duration === duration)?.limits[material] ?? null;
}

/** Surface temperature, °C, and the time after which bare skin is seriously burnt. Not limits: what the limits stay away from. */
export const BURN_TIMES: {
  readonly rows: readonly { readonly seconds: number; readonly metal: number; readonly glass: number; readonly plastic: number }[];
  readonly source: Source;
} = {
  rows: [
    { seconds: 1, metal: 68, glass: 78, plastic: 93 },
    { seconds: 10, metal: 57, glass: 67, plastic: 82 },
    { seconds: 300, metal: 49, glass: 59, plastic: 74 },
  ],
  source: {
    title: 'Archive of the IEEE product-safety list',
    section: 'time to a serious burn, by material',
    standing: 'secondary',
    url: 'https://mail-archive.com/emc-pstc@listserv.ieee.org/msg05244.html',
  },
};
