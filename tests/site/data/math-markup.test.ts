import { describe, expect, it } from 'vitest';
import { FORMULAS } from '../../../src/formulas/index.ts';
import { mathMarkup } from '../../../src/site/data/math-markup.ts';
import { methodPage } from '../../../src/site/data/method-pages.ts';

describe('expressions as MathML', () => {
  it('a fraction is a fraction, and the quantity’s descriptive index is upright', () => {
    const markup = mathMarkup('t = \\frac{C\\,(V_{1}^{2} - V_{2}^{2})}{2\\,P_{\\mathrm{in}}}', 'block');
    expect(markup).toMatch(/^<math display="block">.*<mfrac>.*<\/mfrac>.*<\/math>$/);
    expect(markup).toContain('<mi>in</mi>');
  });

  it.each(FORMULAS.map((formula) => [formula.id, formula] as const))(
    '%s is drawn without style attributes, classes or scripts',
    (_, formula) => {
      const page = methodPage(formula);
      for (const markup of [page.expression, page.result.markup, ...page.inputs.map((input) => input.markup)]) {
        expect(markup).toMatch(/^<math[ >]/);
        expect(markup).not.toMatch(/\s(?:style|class|href)=|<script/);
      }
    },
  );

  it('a slip in the TeX stops the build', () => {
    expect(() => mathMarkup('\\frac{1', 'block')).toThrow();
    expect(() => mathMarkup('\\fracc{1}{2}', 'block')).toThrow();
  });
});
