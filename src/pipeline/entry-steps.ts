import type { CheckInput } from '../checks/check.ts';
import type { Derived } from '../derived/derived.ts';
import type { Diagnostic, Finding } from '../diagnostics/finding.ts';
import type { Answer, Entry } from '../entry/entry.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import type { Table } from '../tables/table.ts';
import type { Value } from '../values/value.ts';

/** A file cut in two: the frontmatter as plain data, and the Markdown text with its offset in the file. */
export interface SplitFile {
  /** Undefined where the frontmatter could not be read. */
  readonly data: unknown;
  readonly text: string;
  readonly textStart: number;
  readonly findings: readonly Finding[];
}

/** One named step that sees an entry: a check or a table. */
interface NamedStep<Input, Output> {
  readonly id: string;
  readonly run: (input: Input) => Output;
}

/** What is done with one file, in order. The pipeline calls these and nothing else, so that a test can let any of them fail. */
export interface EntrySteps {
  readonly split: (file: string, text: string) => SplitFile;
  readonly read: (source: { readonly slug: string; readonly file: string; readonly frontmatter: unknown }) => {
    readonly entry: Entry | null;
    readonly findings: readonly Finding[];
  };
  readonly derive: (entry: Entry, logs: readonly LogSummary[], derating?: SiteDerating) => Derived;
  readonly checks: readonly NamedStep<CheckInput, readonly Finding[]>[];
  readonly tables: readonly (NamedStep<{ readonly entry: Entry; readonly derived: Derived }, Table | null> & {
    readonly hasFigure?: true;
  })[];
  readonly place: (
    source: { readonly file: string; readonly text: string },
    findings: readonly Finding[],
    answers?: readonly Answer[],
  ) => readonly Diagnostic[];
  /** Titles of the formulas by id. */
  readonly methods: ReadonlyMap<string, string>;
  readonly showValue: (value: Value) => string;
}
