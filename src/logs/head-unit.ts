import { unitBySymbol } from '../units/display-units.ts';
import type { Dimension } from '../units/dimension.ts';
import { UNIT_SPELLINGS } from '../units/unit-table.ts';
import type { Unit } from '../units/unit.ts';

/** A unit by any spelling, for a wanted dimension. */
export function unitSpelt(spelling: string, dimension: Dimension): Unit | null {
  return UNIT_SPELLINGS.get(spelling)?.find((unit) => unit.dimension === dimension) ?? unitBySymbol(spelling, dimension);
}

/** The unit that a column's head holds: "U(V)", "Current [mA]", "T/°C", "I_mA", "Voltage (Volt)". Null where it holds none of this dimension. */
export function unitInHead(head: string, dimension: Dimension): Unit | null {
  const whole = unitSpelt(head.trim(), dimension);
  if (whole !== null) return whole;
  // A unit stands behind the name, so the last word that is one counts: "A (mV)" is millivolts.
  const pieces = head.split(/[()[\]{}/_,;:\s]+/).filter((piece) => piece !== '');
  for (const piece of pieces.reverse()) {
    const unit = unitSpelt(piece, dimension);
    if (unit !== null) return unit;
  }
  return null;
}

/** Whether a text is nothing but a unit, in brackets or not, as in a second heading row: "(V)", "mA", "s". */
export function isUnitAlone(text: string): boolean {
  const bare = text.trim().replace(/^[([{]|[)\]}]$/g, '');
  return bare !== '' && UNIT_SPELLINGS.has(bare);
}
