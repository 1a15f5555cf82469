import type { Cursor } from './cursor.ts';
import type { Dimension } from './dimension.ts';
import type { Quantity } from './quantity.ts';
import { chosenTolerance } from './tolerance-letter.ts';
import type { Tolerance } from './tolerance-letter.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';

const TOLERANCED: ReadonlySet<Dimension> = new Set(['resistance', 'capacitance', 'inductance'] as const);
/** No part is sold with a wider symmetric tolerance; a larger percentage is something else. */
const WIDEST = 0.3;
/** The tolerances that passive parts are sold with, percent (IEC 60062 letters B to M): behind a value they mean nothing else. */
const CUSTOMARY_PERCENT: ReadonlySet<number> = new Set([0.1, 0.25, 0.5, 1, 2, 5, 10, 20]);

/** Whether a quantity is of a kind that has a tolerance and has none yet. */
export function takesTolerance(quantity: Quantity): boolean {
  return TOLERANCED.has(quantity.dimension) && quantity.low === quantity.high && quantity.bound === 'value';
}

/** Whether a resistance, capacitance or inductance has its tolerance already. */
export function hasTolerance(quantity: Quantity): boolean {
  return TOLERANCED.has(quantity.dimension) && quantity.low !== quantity.high;
}

/** The quantity with this tolerance around its value. */
export function spreadBy(quantity: Quantity, tolerance: Tolerance): Quantity {
  const scale = tolerance.kind === 'fraction' ? quantity.nominal : 1e-12;
  const clean = (value: number): number => Number(value.toPrecision(15));
  return { ...quantity, low: clean(quantity.nominal - tolerance.below * scale), high: clean(quantity.nominal + tolerance.above * scale) };
}

/** "5 mΩ 1 %": a percentage right behind a resistance, capacitance or inductance is its tolerance. Null where it is not. */
export function withLateTolerance(cursor: Cursor, owner: Quantity, given: Quantity): Quantity | null {
  const isPlain =
    given.dimension === 'ratio' && given.unit === '%' && given.bound === 'value' && given.low === given.high && given.label === undefined;
  if (!isPlain || given.nominal <= 0 || given.nominal > WIDEST || !takesTolerance(owner)) return null;
  if (!CUSTOMARY_PERCENT.has(Number((given.nominal * 100).toPrecision(12)))) {
    const message = `${given.written} is read as the tolerance of ${owner.written}`;
    cursor.remarks.push({ severity: 'note', message, suggestion: `±${given.written}`, span: given.span });
  }
  return spreadBy(owner, { kind: 'fraction', below: given.nominal, above: given.nominal });
}

/** "100 nF K": a tolerance letter of IEC 60062 behind a value. Null where the word is none or the value has its tolerance. */
export function withToleranceLetter(cursor: Cursor, owner: Quantity, word: string): Quantity | null {
  if (word.length !== 1 || !takesTolerance(owner)) return null;
  const unit = UNIT_SPELLINGS.get(owner.unit)?.[0];
  const number = owner.unit === 'pF' ? owner.nominal * 1e12 : owner.nominal;
  const tolerance = unit === undefined ? null : chosenTolerance(word, unit, number);
  if (tolerance === null) return null;
  cursor.remarks.push({
    severity: 'note',
    message: `${word} is read as the tolerance letter of ${owner.written}`,
    suggestion: null,
    span: owner.span,
  });
  return spreadBy(owner, tolerance);
}
