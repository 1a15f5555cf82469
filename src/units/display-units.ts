import type { Dimension } from './dimension.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';
import type { Unit } from './unit.ts';

/** Units that computed values are shown in, smallest first. No millifarad: the trade writes thousands of µF. */
const LADDERS: Readonly<Record<Dimension, readonly string[]>> = {
  voltage: ['mV', 'V', 'kV'],
  current: ['µA', 'mA', 'A'],
  power: ['mW', 'W', 'kW'],
  'apparent power': ['VA', 'kVA'],
  resistance: ['mΩ', 'Ω', 'kΩ', 'MΩ'],
  capacitance: ['pF', 'nF', 'µF'],
  inductance: ['nH', 'µH', 'mH'],
  frequency: ['Hz', 'kHz', 'MHz'],
  time: ['ns', 'µs', 'ms', 's', 'min', 'h'],
  length: ['µm', 'mm', 'm'],
  area: ['mm²', 'cm²'],
  volume: ['mm³', 'cm³'],
  mass: ['mg', 'g', 'kg'],
  energy: ['µJ', 'mJ', 'J', 'kJ', 'Wh'],
  charge: ['nC', 'µC', 'mAh'],
  temperature: ['°C'],
  'temperature difference': ['K'],
  ratio: ['%'],
  'power density': ['W/cm³'],
  'specific power': ['W/kg'],
  'capacitance per power': ['µF/W'],
  'melting integral': ['A²s'],
  'heat flux': ['W/m²'],
  'thermal resistance': ['K/W'],
  'flux density': ['mT', 'T'],
};

/** From how many of a unit on it is used; a time of 90 s stays seconds. */
const LEAST: Readonly<Record<string, number>> = { min: 10, h: 2, kg: 1, m: 1 };

const SCALES = new WeakMap<Unit, number>();

/** What one of this unit is in SI, without an offset. */
export function scaleOf(unit: Unit): number {
  const known = SCALES.get(unit);
  if (known !== undefined) return known;
  // Read from its decimal form: the power of ten is then the nearest number there is.
  const scale = unit.factor * Number(`1e${unit.exponent}`);
  SCALES.set(unit, scale);
  return scale;
}

/** A unit of this dimension by its canonical symbol, or null. "1" is a ratio without a sign. */
export function unitBySymbol(symbol: string, dimension: Dimension): Unit | null {
  return UNIT_SPELLINGS.get(symbol)?.find((unit) => unit.dimension === dimension) ?? null;
}

const KNOWN_LADDERS = new Map<Dimension, readonly Unit[]>();

function ladderOf(dimension: Dimension): readonly Unit[] {
  const known = KNOWN_LADDERS.get(dimension);
  if (known !== undefined) return known;
  const units = LADDERS[dimension].flatMap((symbol) => unitBySymbol(symbol, dimension) ?? []);
  KNOWN_LADDERS.set(dimension, units);
  return units;
}

/** The unit in which a value of this size is shown. */
export function displayUnit(value: number, dimension: Dimension): Unit | null {
  const units = ladderOf(dimension);
  const fitting = units.findLast((unit) => Math.abs(value) >= scaleOf(unit) * (LEAST[unit.symbol] ?? 1) * (1 - 1e-9));
  return fitting ?? (value === 0 ? (units.find((unit) => scaleOf(unit) === 1) ?? units[0]) : units[0]) ?? null;
}
