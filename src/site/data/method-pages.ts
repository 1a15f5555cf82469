import { FORMULAS } from '../../formulas/index.ts';
import type { Formula, FormulaSymbol } from '../../values/formula.ts';
import { workExample, type WorkedExample } from './example-agreement.ts';
import { mathMarkup } from './math-markup.ts';

/** One symbol of a formula as its page shows it. */
export interface MethodSymbol {
  /** Input key, or `result`. */
  readonly key: string;
  readonly markup: string;
  readonly meaning: string;
  readonly unit: string;
  readonly dimension: string;
}

/** Everything that the page of one formula shows, apart from the sheets that use it. */
export interface MethodPage {
  readonly formula: Formula;
  /** The whole relation as MathML in display style. */
  readonly expression: string;
  readonly inputs: readonly MethodSymbol[];
  readonly result: MethodSymbol;
  readonly examples: readonly WorkedExample[];
}

/** Formulas of one subject folder. */
export interface MethodSubject {
  readonly subject: string;
  readonly methods: readonly MethodPage[];
}

/** All formulas by subject, in the order of the registry. */
export function methodSubjects(): readonly MethodSubject[] {
  const subjects = new Map<string, MethodPage[]>();
  for (const formula of FORMULAS) {
    subjects.set(formula.subject, [...(subjects.get(formula.subject) ?? []), methodPage(formula)]);
  }
  return [...subjects].map(([subject, methods]) => ({ subject, methods }));
}

/** The page of one formula. */
export function methodPage(formula: Formula): MethodPage {
  return {
    formula,
    expression: mathMarkup(formula.expression, 'block'),
    inputs: Object.entries(formula.inputs).map(([key, symbol]) => symbolOf(key, symbol)),
    result: symbolOf('result', formula.output),
    examples: formula.examples.map((example) => workExample(formula, example)),
  };
}

function symbolOf(key: string, { tex, meaning, unit, dimension }: FormulaSymbol): MethodSymbol {
  return { key, markup: mathMarkup(tex, 'inline'), meaning, unit: unit === '1' ? 'ratio' : unit, dimension };
}
