import { DIMENSION_NAMES } from './dimension-names.ts';
import type { Dimension } from './dimension.ts';
import type { Quantity } from './quantity.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';

/** A quantity of another dimension than the field's: what to say, and what was probably meant. */
export interface DimensionSlip {
  readonly message: string;
  readonly suggestion: string | null;
}

const BASE_SYMBOLS: Partial<Readonly<Record<Dimension, string>>> = {
  voltage: 'V',
  current: 'A',
  power: 'W',
  'apparent power': 'VA',
  resistance: 'Ω',
  capacitance: 'F',
  inductance: 'H',
  frequency: 'Hz',
  time: 's',
  length: 'm',
  mass: 'g',
  energy: 'Wh',
  charge: 'Ah',
  temperature: '°C',
  'power density': 'W/in³',
};

/**
 * Words for a value whose dimension is not the expected one: "140 mL is a volume; an on-resistance is in mΩ".
 * `subject` names the field with its article, `units` the units it is usually written in.
 */
export function dimensionSlip(
  quantity: Quantity,
  expected: Dimension,
  subject: string = DIMENSION_NAMES[expected].phrase,
  units: string = DIMENSION_NAMES[expected].units,
): DimensionSlip {
  const message = `${quantity.written} is ${DIMENSION_NAMES[quantity.dimension].phrase}; ${subject} is in ${units}`;
  return { message, suggestion: suggestionFor(quantity, expected) };
}

/** The same number and prefix with the expected unit, where that is a unit people write: mL → mΩ, µH → µF. */
function suggestionFor(quantity: Quantity, expected: Dimension): string | null {
  const symbol = BASE_SYMBOLS[expected];
  if (symbol === undefined) return null;
  const prefix = /^[pnµmkM](?=.)/.exec(quantity.unit)?.[0] ?? '';
  const isPrefixed = prefix !== '' && !['min', 'mil', 'm²', 'm³', 'mm²', 'mm³'].includes(quantity.unit);
  const candidate = (isPrefixed ? prefix : '') + symbol;
  if (expected === 'length' && !isPrefixed) return null;
  // Nobody writes millifarads: 12 mm was hardly 12 mF.
  if (symbol === 'F' && isPrefixed && prefix === 'm') return null;
  const isWritten = UNIT_SPELLINGS.get(candidate)?.some((unit) => unit.dimension === expected) ?? false;
  const number = /^[^\p{L}%°"']*\d/u.exec(quantity.written)?.[0];
  return isWritten && number !== undefined ? `${number.trim()} ${candidate}` : null;
}
