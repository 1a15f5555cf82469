import type { Dimension } from '../units/dimension.ts';
import type { Source } from './value.ts';

/** One symbol of a formula. `unit` is the one to show it in ("µF"), whatever SI unit it is computed in. */
export interface FormulaSymbol<D extends Dimension = Dimension> {
  /** TeX of the symbol, such as `V_{1}`. */
  readonly tex: string;
  readonly dimension: D;
  readonly meaning: string;
  readonly unit: string;
}

/**
 * A published worked example. `inputs` and `printed` are strings as printed with their unit ("150 µF", "10.5 J");
 * agreement means: within half of the last printed digit, widened only by `allowance` with its reason.
 */
export interface FormulaExample {
  readonly source: Source;
  readonly inputs: Readonly<Record<string, string>>;
  readonly printed: string;
  /** `published` by somebody; `independent` = computed apart from this program (named in the source); */
  readonly kind: 'published' | 'independent';
  /** Extra room as a fraction of the printed value, where the source rounds intermediates; the reason says which. */
  readonly allowance?: { readonly fraction: number; readonly reason: string };
}

/** A relation between quantities, declared once: applied to values, tested against its examples, and shown on its own page. */
export interface Formula<
  I extends Readonly<Record<string, Dimension>> = Readonly<Record<string, Dimension>>,
  D extends Dimension = Dimension,
> {
  /** kebab-case, equal to the file stem and the page's address: `/methods/<id>/`. */
  readonly id: string;
  readonly title: string;
  /** Folder it stands in: mains, bulk, capacitor, geometry … */
  readonly subject: string;
  /** One or two sentences: what it tells. */
  readonly meaning: string;
  /** TeX of the whole relation. */
  readonly expression: string;
  readonly output: FormulaSymbol<D>;
  readonly inputs: { readonly [K in keyof I]: FormulaSymbol<I[K]> };
  /**
   * Plain SI numbers in, plain SI number out; pure, and monotone in each input but for `turningPoints`, so that the corners of the
   * inputs' intervals bound the result. Outside its validity it returns NaN, which `applyFormula` turns into a missing value.
   * A method rather than a property, so that a formula with named inputs can stand in a list of formulas of any inputs.
   */
  compute(inputs: { readonly [K in keyof I]: number }): number;
  /** Where it stops being valid, a sentence each. */
  readonly validity: readonly string[];
  /** What a reader of other papers has to know: where sources differ or misprint, and which form stands here. A sentence each. */
  readonly remarks?: readonly string[];
  /**
   * Where the result turns round inside an interval instead of rising or falling all the way: for the other inputs given, the
   * value of an input at which it turns. `applyFormula` works it there too, so that the interval holds the turning point.
   */
  turningPoints?(inputs: { readonly [K in keyof I]: number }): Partial<Readonly<Record<keyof I, number>>>;
  readonly source: Source;
  readonly examples: readonly FormulaExample[];
}
