import type { Formula, FormulaExample } from '../../values/formula.ts';
import type { Source } from '../../values/value.ts';
import type { Dimension } from '../../units/dimension.ts';
import type { Quantity } from '../../units/quantity.ts';
import { readQuantity } from '../../units/read-quantity.ts';

/** A printed example worked again by the program, ready to stand in a row. */
export interface WorkedExample {
  readonly source: Source;
  readonly kind: FormulaExample['kind'];
  /** Inputs as printed, by the formula's input keys. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly printed: string;
  /** Computed, in the printed unit, with one digit more than printed. */
  readonly computed: string;
  readonly agrees: boolean;
  /** Largest difference that counts as agreement, in the printed unit: "0.05 ms". */
  readonly margin: string;
  /** Why the margin is wider than half of the last printed digit; null where it is not. */
  readonly allowance: string | null;
}

/** Works an example again. Throws where its own texts cannot be read: a declaration's fault, which must stop the build. */
export function workExample(formula: Formula, example: FormulaExample): WorkedExample {
  const numbers: Record<string, number> = {};
  for (const [key, symbol] of Object.entries(formula.inputs)) {
    numbers[key] = asRead(formula, example.inputs[key] ?? '', symbol.dimension).nominal;
  }
  const printed = asRead(formula, example.printed, formula.output.dimension);
  const computed = formula.compute(numbers);
  const margin = printed.resolution / 2 + Math.abs(printed.nominal) * (example.allowance?.fraction ?? 0);
  const scale = siOfOne(formula, printed.unit, formula.output.dimension);
  const decimals = decimalsOf(printed.resolution / scale);
  return {
    source: example.source,
    kind: example.kind,
    inputs: example.inputs,
    printed: example.printed,
    computed: withUnit((computed / scale).toFixed(decimals + 1), printed.unit),
    agrees: agreesWithin(computed, printed.nominal, margin),
    margin: withUnit(shortest(margin / scale), printed.unit),
    allowance: example.allowance?.reason ?? null,
  };
}

/** A result on the edge of the margin agrees: 2.5 is printed as 3 or as 2, and binary fractions blur the edge by a few parts in 10¹². */
function agreesWithin(computed: number, printed: number, margin: number): boolean {
  return Math.abs(computed - printed) <= margin + Math.abs(printed) * 1e-12;
}

function asRead<D extends Dimension>(formula: Formula, text: string, dimension: D): Quantity<D> {
  const reading = readQuantity(text, dimension);
  if (!reading.ok)
    throw new Error(`Formula ${formula.id}: cannot read "${text}": ${reading.remarks.map((remark) => remark.message).join('; ')}`);
  return reading.value;
}

/** SI number of one of the unit. Temperatures stay in degrees Celsius, plain ratios in ones. */
function siOfOne(formula: Formula, unit: string, dimension: Dimension): number {
  return dimension === 'temperature' || unit === '' || unit === '1' ? 1 : asRead(formula, `1 ${unit}`, dimension).nominal;
}

/** Decimals that show a digit of this weight: 0.01 has two, 10 has none. */
function decimalsOf(weight: number): number {
  return Math.max(0, Math.min(12, Math.ceil(-Math.log10(weight) - 1e-9)));
}

function shortest(number: number): string {
  return String(Number(number.toPrecision(2)));
}

function withUnit(number: string, unit: string): string {
  const digits = number.replace('-', '−');
  return unit === '' || unit === '1' ? digits : `${digits} ${unit}`;
}
