import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import type { Derived } from '../derived/derived.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import type { Source } from '../values/value.ts';

/** Declaration of a check; its id is the stem of its file. */
export type Rule = RuleDeclaration<Source>;

/** What a check sees: the entry, what was computed from it, and the Markdown text with its offset in the file. */
export interface CheckInput {
  readonly entry: Entry;
  readonly derived: Derived;
  readonly text: string;
  readonly textStart: number;
}

/** One rule with the code that finds breaches of it. Pure, and never throws on any entry. */
export interface Check extends Rule {
  readonly check: (input: CheckInput) => Finding[];
}
