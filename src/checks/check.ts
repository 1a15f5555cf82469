import type { Derived } from '../derived/derived.ts';
import type { Finding, Severity } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import type { Source } from '../values/value.ts';

/** Declaration of a rule, from which its page, its explanation and the defaults of its findings come. */
export interface Rule {
  /** kebab-case, equal to the file stem and to the page's address: `/rules/<id>/`. */
  readonly id: string;
  readonly title: string;
  /** The gravest severity that the rule gives. */
  readonly severity: Severity;
  /** Why it matters, one or two sentences. */
  readonly why: string;
  /** What to do. */
  readonly advice: string;
  /** Where the limit comes from; one from memory never decides an error. */
  readonly source: Source;
}

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
