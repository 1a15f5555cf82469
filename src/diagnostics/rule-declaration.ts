import type { Severity } from './finding.ts';

/**
 * Declaration of a rule, from which its page, its explanation and the defaults of its findings come. Its source is a `Source` where a
 * standing is claimed, else words.
 */
export interface RuleDeclaration<From> {
  /** kebab-case; also the page's address: `/rules/<id>/`. */
  readonly id: string;
  readonly title: string;
  /** The gravest severity that the rule gives. */
  readonly severity: Severity;
  /** Why it matters, one or two sentences. */
  readonly why: string;
  /** What to do. */
  readonly advice: string;
  /** Where the limit comes from; one from memory never decides an error. */
  readonly source: From;
}
