import type { RuleDescription } from '../checks/rules.ts';
import { FORMULAS } from '../formulas/index.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import { sourceInWords } from '../values/source-in-words.ts';
import { allRules } from '../pipeline/all-rules.ts';
import type { Formula, FormulaExample } from '../values/formula.ts';
import type { Command, GivenOptions } from './command.ts';
import { DONE, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

export const explain: Command = {
  name: 'explain',
  operand: '<rule or formula>',
  meaning: 'say what a rule asks or what a formula computes, and why',
  options: [],
  run: runExplain,
};

function runExplain(id: string, _: GivenOptions, { stdout }: CommandStreams): Promise<number> {
  const rules = allRules();
  const rule = rules.find((each) => each.id === id);
  const formula = FORMULAS.find((each) => each.id === id);
  if (rule === undefined && formula === undefined) {
    const names = [...rules, ...FORMULAS].map((each) => each.id);
    throw new WrongUsage(`There is no rule or formula "${id}"${didYouMean(id, names)}`);
  }
  if (rule !== undefined) stdout.write(wordsOfRule(rule));
  if (formula !== undefined) stdout.write(wordsOfFormula(formula));
  return Promise.resolve(DONE);
}

function wordsOfRule({ id, title, severity, why, advice, source }: RuleDescription): string {
  return [`${id} (${severity})`, title, '', why, `What to do: ${advice}`, `Source: ${source}`, ''].join('\n');
}

function wordsOfFormula(formula: Formula): string {
  const symbols = [formula.output, ...Object.values(formula.inputs)].map(
    (symbol) => `  ${symbol.tex}  ${symbol.meaning}, in ${symbol.unit}`,
  );
  return [
    `${formula.id} (formula)`,
    formula.title,
    '',
    formula.meaning,
    `  ${formula.expression}`,
    ...symbols,
    ...formula.validity.map((sentence) => `Valid: ${sentence}`),
    `Source: ${sourceInWords(formula.source)}`,
    ...examplesUnder('Published examples that it reproduces:', formula, 'published'),
    ...examplesUnder('Other examples that it reproduces:', formula, 'independent'),
    '',
  ].join('\n');
}

function examplesUnder(heading: string, { examples }: Formula, kind: FormulaExample['kind']): readonly string[] {
  const rows = examples.filter((example) => example.kind === kind).map(wordsOfExample);
  return rows.length === 0 ? [] : [heading, ...rows];
}

function wordsOfExample({ inputs, printed, source, kind }: FormulaExample): string {
  const given = Object.entries(inputs).map(([name, value]) => `${name} = ${value}`);
  // What was worked apart is no quotation of anything, so it has no standing to state.
  return `  ${given.join(', ')} → ${printed} (${kind === 'published' ? sourceInWords(source) : source.title})`;
}
