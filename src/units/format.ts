import type { Dimension } from './dimension.ts';
import { displayUnit, scaleOf, unitBySymbol } from './display-units.ts';
import { formatNumber, MINUS, NARROW_SPACE, placesFor } from './format-number.ts';
import type { Quantity } from './quantity.ts';
import type { Unit } from './unit.ts';

/** A quantity ready to print. `text` is the whole of it and reads back as the same quantity. */
export interface FormattedQuantity {
  readonly number: string;
  /** Unit with "AC" or "DC" where it was said; empty for a plain ratio. */
  readonly unit: string;
  /** The span as "17 to 33" in the same unit, or null where there is none. */
  readonly interval: string | null;
  readonly text: string;
}

/** What is needed to print a value: its span and the digits its nominal supports, in SI units. */
export interface Interval {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  readonly significant: number;
}

/** Prints a quantity in the unit it was written in, with the digits it was written with. */
export function formatQuantity(quantity: Quantity): FormattedQuantity {
  const unit = unitBySymbol(quantity.unit, quantity.dimension);
  const places = placesOfResolution(quantity.resolution, unit);
  const shown = (value: number): string => formatNumber(inUnit(value, unit), places);
  const spoken = quantity.unit === '1' ? '' : quantity.unit + (quantity.waveform === null ? '' : ` ${quantity.waveform}`);
  const { low, high } = quantity;
  const hasSpan = low !== null && high !== null && low < high;
  const interval = !hasSpan
    ? null
    : quantity.bound === 'range'
      ? between(shown(low), shown(high))
      : between(exact(low, unit), exact(high, unit));
  const number = shown(quantity.nominal);
  return { number, unit: spoken, interval, text: withLimits(quantity, withUnit(core(quantity, unit, shown), spoken)) };
}

function between(low: string, high: string): string {
  return `${low} to ${high}`;
}

function withUnit(number: string, unit: string): string {
  return unit === '' ? number : `${number}${NARROW_SPACE}${unit.replace(' ', NARROW_SPACE)}`;
}

function inUnit(value: number, unit: Unit | null): number {
  if (unit === null) return value;
  const shifted = (value - unit.offset) / scaleOf(unit);
  return Number(shifted.toPrecision(14));
}

function placesOfResolution(resolution: number, unit: Unit | null): number {
  const inside = unit === null ? resolution : resolution / scaleOf(unit);
  const places = -Math.floor(Math.log10(inside) + 1e-6);
  return Number.isFinite(places) ? Math.max(0, places) : 0;
}

/** All digits of a tolerance's end, without binary noise. */
function exact(value: number, unit: Unit | null): string {
  const inside = Number(inUnit(value, unit).toPrecision(10));
  const decimals = /e-(\d+)$/.exec(String(inside));
  const fraction = String(inside).split('e')[0]?.split('.')[1]?.length ?? 0;
  return formatNumber(inside, fraction + Number(decimals?.[1] ?? 0));
}

/** Numbers of the quantity before its unit: "100 to 240", "85 / 230 / 265", "68.0 ± 0.3", "100 +10/−20". */
function core(quantity: Quantity, unit: Unit | null, shown: (value: number) => string): string {
  const { low, nominal, high } = quantity;
  if (low === null || high === null || low === high) return shown(nominal);
  if (quantity.bound === 'range') {
    const isMiddle = Math.abs(nominal - (low + high) / 2) <= 1e-9 * Math.max(Math.abs(low), Math.abs(high));
    return isMiddle ? between(shown(low), shown(high)) : `${shown(low)} / ${shown(nominal)} / ${shown(high)}`;
  }
  const scale = unit === null ? null : { ...unit, offset: 0 };
  const [below, above] = [exact(nominal - low, scale), exact(high - nominal, scale)];
  return below === above ? `${shown(nominal)} ± ${below}` : `${shown(nominal)} +${above}/${MINUS}${below}`;
}

const SIGNS = { 'at most': '≤', below: '<', 'at least': '≥', above: '>' } as const;
const QUALIFIERS = { typical: 'typ', maximum: 'max', minimum: 'min', nominal: 'nom' } as const;

function withLimits(quantity: Quantity, text: string): string {
  const { bound, qualifier } = quantity;
  const isImplied = (qualifier === 'maximum' && bound === 'at most') || (qualifier === 'minimum' && bound === 'at least');
  const signed = bound === 'value' || bound === 'range' || isImplied ? text : `${SIGNS[bound]} ${text}`;
  return qualifier === null ? signed : `${signed} ${QUALIFIERS[qualifier]}`;
}

/**
 * Prints a computed value: the unit that suits its size (or the one given), and no more digits than its interval and its significant
 * digits support. The interval is printed to the same digit.
 */
export function formatInterval(value: Interval, dimension: Dimension, unitSymbol?: string): FormattedQuantity {
  const key = `${dimension} ${unitSymbol ?? ''}`;
  const known = FORMATTED.get(value);
  const before = known?.get(key);
  if (before !== undefined) return before;
  const formatted = intervalText(value, dimension, unitSymbol);
  if (known === undefined) FORMATTED.set(value, new Map([[key, formatted]]));
  else known.set(key, formatted);
  return formatted;
}

// A sheet shows one value in several places: figure, table, working.
const FORMATTED = new WeakMap<Interval, Map<string, FormattedQuantity>>();

function intervalText(value: Interval, dimension: Dimension, unitSymbol: string | undefined): FormattedQuantity {
  const wished = unitSymbol === undefined ? null : unitBySymbol(unitSymbol, dimension);
  const unit = unitSymbol === '1' ? null : (wished ?? displayUnit(value.nominal, dimension));
  const [low, nominal, high] = [value.low, value.nominal, value.high].map((end) => inUnit(end, unit));
  if (low === undefined || nominal === undefined || high === undefined) return { number: '', unit: '', interval: null, text: '' };
  const places = Math.min(placesFor(nominal, value.significant), placesOfSpan(high - low));
  const symbol = unit?.symbol ?? '';
  const number = formatNumber(nominal, places);
  const [from, to] = [formatNumber(low, places), formatNumber(high, places)];
  const ends = between(from, to);
  // An interval that vanishes at the last printed digit is what that digit says already.
  const hasSpan = from !== to;
  return { number, unit: symbol, interval: hasSpan ? ends : null, text: withUnit(hasSpan ? `${number} (${ends})` : number, symbol) };
}

/** An interval of 0.6 supports tenths, one of 16 supports ones: the digit at which a quarter of the span begins. */
function placesOfSpan(span: number): number {
  return span > 0 ? -Math.floor(Math.log10(span / 4) + 1e-9) : Number.POSITIVE_INFINITY;
}
