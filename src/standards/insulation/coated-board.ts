import { between } from './clearance.ts';
import type { Source } from '../../values/value.ts';

/** Separation on a coated board, basic insulation: working voltage in V and distance in mm. Reinforced takes twice as much. */
export const COATED_BOARD: { readonly points: readonly (readonly [volts: number, millimetres: number])[]; readonly source: Source } = {
  points: [
    [250, 0.6],
    [320, 0.8],
    [400, 1],
  ],
  source: { title: 'ECMA-287, 1st edition (June 1999)', section: 'table 3.9, as transcribed', standing: 'secondary' },
};

/** Separation on a coated board, mm, linear between the rows read (250 to 400 V); null above them. */
export function coatedBoardSeparation(volts: number, kind: 'basic' | 'reinforced'): number | null {
  const basic = between(COATED_BOARD.points, volts);
  return basic === null ? null : kind === 'reinforced' ? 2 * basic : basic;
}
