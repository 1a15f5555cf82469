import type { Derived } from '../derived/derived.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';

/** What one sheet computes with one formula: the first value, in words where it stands, and how many others there are. */
export interface FormulaUse {
  /** Id of the formula. */
  readonly formula: string;
  /** What was computed: "density", "C5 voltage", or "for C5 voltage" where it served another value. */
  readonly label: string;
  readonly value: Pick<Value, 'dimension' | 'low' | 'nominal' | 'high' | 'significant'>;
  /** Further, different values that the same formula gave on this sheet. */
  readonly others: number;
}

/** The formulas that made the derived figures of one sheet, in the order of the figures; one row a formula. */
export function formulaUses(derived: Derived): readonly FormulaUse[] {
  const uses = new Map<string, { readonly label: string; readonly value: Value; readonly seen: Set<string> }>();
  for (const [label, known] of figuresOf(derived)) {
    if (!isMissing(known)) {
      visit(known, label, (formula, value, words) => {
        const use = uses.get(formula) ?? { label: words, value, seen: new Set<string>() };
        uses.set(formula, use);
        use.seen.add(`${String(value.low)} ${String(value.nominal)} ${String(value.high)}`);
      });
    }
  }
  return [...uses].map(([formula, { label, value, seen }]) => {
    const { dimension, low, nominal, high, significant } = value;
    return { formula, label, value: { dimension, low, nominal, high, significant }, others: seen.size - 1 };
  });
}

/** Figures with the words for them; those with names of their own first. */
function figuresOf(derived: Derived): readonly (readonly [string, Known])[] {
  const stress = derived.stress.flatMap((row): (readonly [string, Known])[] => {
    const words = `${row.references.join(' · ')} ${row.quantity}`;
    return [
      [`${words}, of its rating`, row.ratio],
      [words, row.stress],
    ];
  });
  const named = Object.entries(derived.named).map(([name, known]): readonly [string, Known] => [name.replaceAll('-', ' '), known]);
  return [...named, ...stress];
}

/** The value itself, then everything that it was computed from. */
function visit(value: Value, label: string, see: (formula: string, value: Value, label: string) => void): void {
  if (value.origin.evidence !== 'computed') return;
  see(value.origin.formula, value, label);
  const inner = label.startsWith('for ') ? label : `for ${label}`;
  for (const input of Object.values(value.origin.inputs)) visit(input, inner, see);
}
