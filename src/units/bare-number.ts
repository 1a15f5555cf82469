import type { Dimension } from './dimension.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';
import type { Unit } from './unit.ts';

/**
 * Dimensions in which a number alone has one usual meaning. A capacitance or an inductance has none: 47 may be pF or µF.
 * Lengths, masses and volumes are refused too, since millimetres and inches both are usual.
 */
const USUAL: Partial<Readonly<Record<Dimension, string>>> = { resistance: 'Ω', voltage: 'V', current: 'A', power: 'W', frequency: 'Hz' };

const NUMBER_ALONE: Unit = {
  dimension: 'ratio',
  symbol: '1',
  exponent: 0,
  factor: 1,
  offset: 0,
  system: 'metric',
  waveform: null,
  isPeakToPeak: false,
  onlyWhereWanted: false,
  isLetterCode: false,
  remark: null,
};

/** The unit that a number without one has in a field of this dimension, or null where it must be written. */
export function unitOfBareNumber(dimension: Dimension | null): Unit | null {
  if (dimension === null) return null;
  if (dimension === 'ratio') return NUMBER_ALONE;
  const symbol = USUAL[dimension];
  return symbol === undefined ? null : (UNIT_SPELLINGS.get(symbol)?.find((unit) => unit.dimension === dimension) ?? null);
}
