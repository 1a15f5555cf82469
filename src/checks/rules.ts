import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import { READING_RULES } from '../entry/reading-rules.ts';
import { sourceInWords } from '../values/source-in-words.ts';
import { CHECKS } from './index.ts';

/** A rule as its page and `explain` show it. */
export interface RuleDescription extends RuleDeclaration<string> {
  /** Stem of the example entry in `src/checks/examples/`; null for rules of the reader, which have none there. */
  readonly example: string | null;
}

/** Every rule on the data of an entry: those of the reader first, then the checks. Rules on Markdown syntax are declared by its reader. */
export const RULES: readonly RuleDescription[] = [
  ...READING_RULES.map((rule) => ({ ...rule, example: null })),
  ...CHECKS.map(({ id, title, severity, why, advice, source }) => ({
    id,
    title,
    severity,
    why,
    advice,
    source: sourceInWords(source),
    example: id,
  })),
];
