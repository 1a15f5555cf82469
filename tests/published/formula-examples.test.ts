import { describe, expect, it } from 'vitest';
import { FORMULAS } from '../../src/formulas/index.ts';
import type { Formula, FormulaExample } from '../../src/values/formula.ts';
import { published, quantityOf } from './published.ts';

const EXAMPLES = FORMULAS.flatMap((formula) => formula.examples.map((example) => ({ formula, example })));

describe('every example of every formula is reproduced as printed', () => {
  it.each(EXAMPLES.map((one) => [titleOf(one.formula, one.example), one] as const))('%s', (_, { formula, example }) => {
    const comparison = published(compute(formula, example), example.printed, formula.output.dimension, example.allowance ?? null);
    expect(comparison.agrees, comparison.says).toBe(true);
  });

  it.each(EXAMPLES.map((one) => [titleOf(one.formula, one.example), one] as const))(
    'and would not be with a result further off by three per cent: %s',
    (_, given) => {
      const { formula, example } = given;
      const right = compute(formula, example);
      const computed = right * (right < quantityOf(example.printed, formula.output.dimension).nominal ? 0.97 : 1.03);
      // Two printed digits or fewer hold a value to 5 % at best.
      const isCoarse = quantityOf(example.printed, formula.output.dimension).significant <= 2;
      if (!isCoarse) expect(published(computed, example.printed, formula.output.dimension, example.allowance ?? null).agrees).toBe(false);
    },
  );

  it('allowances say why', () => {
    for (const { example } of EXAMPLES) if (example.allowance !== undefined) expect(example.allowance.reason.length).toBeGreaterThan(20);
  });

  it('published examples are not from memory', () => {
    for (const { example } of EXAMPLES) if (example.kind === 'published') expect(example.source.standing).not.toBe('memory');
  });
});

function compute(formula: Formula, example: FormulaExample): number {
  const inputs = Object.entries(formula.inputs).map(
    ([key, symbol]) => [key, quantityOf(example.inputs[key] ?? '', symbol.dimension).nominal] as const,
  );
  return formula.compute(Object.fromEntries(inputs));
}

function titleOf(formula: Formula, example: FormulaExample): string {
  return `${formula.id}: ${example.printed} (${example.kind}, ${example.source.title}, ${example.source.section})`;
}
