import { describe, expect, it } from 'vitest';
import { FORMULAS } from '../../../src/formulas/index.ts';
import { workExample } from '../../../src/site/data/example-agreement.ts';
import { defineFormula } from '../../../src/values/define-formula.ts';
import type { FormulaExample } from '../../../src/values/formula.ts';

const SOURCE = { title: 'Invented note', section: 'p. 1', standing: 'read' } as const;

const energy = defineFormula({
  id: 'invented-energy',
  title: 'Energy',
  subject: 'test',
  meaning: 'Energy of a capacitor.',
  expression: 'E = \\tfrac{1}{2} C V^{2}',
  output: { tex: 'E', dimension: 'energy', meaning: 'energy', unit: 'J' },
  inputs: {
    c: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
    v: { tex: 'V', dimension: 'voltage', meaning: 'voltage', unit: 'V' },
  },
  compute: ({ c, v }) => 0.5 * c * v * v,
  validity: [],
  source: SOURCE,
  examples: [],
});

function example(printed: string, allowance?: FormulaExample['allowance']): FormulaExample {
  return {
    source: SOURCE,
    inputs: { c: '82 µF', v: '389 V' },
    printed,
    kind: 'published',
    ...(allowance === undefined ? {} : { allowance }),
  };
}

describe('a printed example worked again', () => {
  it('82 µF at 389 V hold 6.204 J: printed 6.2 J agrees to half of its last digit', () => {
    expect(workExample(energy, example('6.2 J'))).toMatchObject({ computed: '6.20 J', margin: '0.05 J', agrees: true });
  });

  it('is shown in the printed unit with one digit more', () => {
    expect(workExample(energy, example('6204 mJ'))).toMatchObject({ computed: '6204.2 mJ', margin: '0.5 mJ', agrees: true });
  });

  it('printed 6.3 J does not agree, and the page says so', () => {
    expect(workExample(energy, example('6.3 J'))).toMatchObject({ agrees: false });
  });

  it('an allowance widens the margin and gives its reason', () => {
    expect(workExample(energy, example('6.3 J', { fraction: 0.02, reason: 'the source rounds the voltage' }))).toMatchObject({
      agrees: true,
      allowance: 'the source rounds the voltage',
    });
  });

  it.each(FORMULAS.flatMap((formula) => formula.examples.map((one) => [formula.id, one.printed, formula, one] as const)))(
    '%s: %s agrees on its page',
    (_, __, formula, one) => {
      const worked = workExample(formula, one);
      expect(worked).toMatchObject({ agrees: true });
      expect(worked.computed).not.toMatch(/NaN|Infinity/);
    },
  );
});
