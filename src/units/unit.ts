import type { Dimension } from './dimension.ts';

/** A unit with its prefix: one SI number is `number × 10^exponent × factor + offset`. */
export interface Unit {
  readonly dimension: Dimension;
  /** Canonical spelling, such as "mΩ", "µF", "W/in³". */
  readonly symbol: string;
  readonly exponent: number;
  readonly factor: number;
  readonly offset: number;
  readonly system: 'metric' | 'imperial';
  /** The spelling says alternating or direct: "VAC", "Vdc"; null also where it says both. */
  readonly waveform: 'AC' | 'DC' | null;
  readonly isPeakToPeak: boolean;
  /** Only read as this unit where this dimension is wanted: "k" is kilo-ohm in a resistor row and nothing elsewhere. */
  readonly onlyWhereWanted: boolean;
  /** A lone letter that opens a letter code when a digit follows: "4R" is 4 Ω, "4R7" is not. */
  readonly isLetterCode: boolean;
  /** A reason to speak up although it can be read. */
  readonly remark: { readonly severity: 'warning' | 'note'; readonly message: string } | null;
}

/** A spelling that is known and refused, with what to write instead. */
export interface RefusedSpelling {
  readonly refused: string;
  readonly instead: string;
}

/** SI value of a decimal number in this unit, rounded once where only the prefix scales it. */
export function inSiUnit(decimal: string, exponent: number, unit: Unit): number {
  const scaled = Number(`${decimal}e${exponent + unit.exponent}`);
  if (unit.factor === 1 && unit.offset === 0) return scaled;
  // Fifteen digits drop the binary noise of the multiplication: 3.30 in is 0.08382 m.
  return Number((scaled * unit.factor + unit.offset).toPrecision(15));
}

const THOUSANDS_UNPREFIXED: ReadonlySet<string> = new Set(['Hz', 'Ω', 'h', 'mm³', 'µm']);

/** Units in which digits come in thousands, so that a comma before three digits groups them: mAh, µF, mV, Hz, Ω. */
export function countsInThousands(unit: Unit): boolean {
  if (THOUSANDS_UNPREFIXED.has(unit.symbol)) return true;
  return ELECTRICAL.has(unit.dimension) && /^[mµnp]./.test(unit.symbol);
}

const ELECTRICAL: ReadonlySet<Dimension> = new Set([
  'voltage',
  'current',
  'power',
  'capacitance',
  'inductance',
  'charge',
  'energy',
  'time',
] as const);
