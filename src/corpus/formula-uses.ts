import type { Derived } from '../derived/derived.ts';
import type { Value } from '../values/value.ts';

/** One application of a formula on one sheet. */
export interface FormulaUse {
  readonly formula: string;
  /** Where in the derived figures the value stands: "bulk.energy". */
  readonly at: string;
  readonly value: Value;
}

/**
 * Every computed value in the derived figures of one sheet, with the formula that made it, in the order of the figures; values that
 * only served as inputs of others are named by where they served. The same value reached twice is given once.
 */
export function formulaUses(derived: Derived): readonly FormulaUse[] {
  const uses: FormulaUse[] = [];
  const seen = new Set<string>();
  walk(derived, [], (value, path) => {
    if (value.origin.evidence !== 'computed') return;
    const key = `${value.origin.formula} ${String(value.low)} ${String(value.nominal)} ${String(value.high)}`;
    if (seen.has(key)) return;
    seen.add(key);
    uses.push({ formula: value.origin.formula, at: path.filter((step) => step !== 'origin' && step !== 'inputs').join('.'), value });
  });
  return uses;
}

function walk(data: unknown, path: readonly string[], visit: (value: Value, path: readonly string[]) => void): void {
  if (typeof data !== 'object' || data === null) return;
  if (isValue(data)) visit(data, path);
  for (const [key, inner] of Object.entries(data)) walk(inner, [...path, key], visit);
}

/** Derived figures are plain data in which only values have both an origin and a nominal number. */
function isValue(data: object): data is Value {
  return 'origin' in data && 'nominal' in data && 'dimension' in data;
}
