/** `error`: cannot be right or would break the site, stops publishing; `warning`: thin, or probably a slip; `note`. */
export type Severity = 'error' | 'warning' | 'note';

/** Keys and indexes from the top of the frontmatter to the value concerned: ['parts', 'pfc', 'C5', 'rating']. */
export type DataPath = readonly (string | number)[];

/** Where a finding is, before the file is looked at again: in the data, in the Markdown text, or the file as a whole. */
export type Whereabouts =
  | {
      readonly in: 'data';
      readonly path: DataPath;
      /** The key itself or its value. */
      readonly part: 'key' | 'value';
      /** Offsets inside the scalar's text, where the fault is only a piece of it. */
      readonly span?: { readonly start: number; readonly end: number };
    }
  | { readonly in: 'text'; /** Offsets in the whole file. */ readonly start: number; readonly end: number }
  | { readonly in: 'file'; readonly line?: number; readonly column?: number };

/** What a check says about an entry. */
export interface Finding {
  /** Id of the rule, kebab-case, with a page at `/rules/<id>/`. */
  readonly rule: string;
  readonly severity: Severity;
  readonly where: Whereabouts;
  /** What: part, value, limit; as written and as compared. One sentence. */
  readonly message: string;
  /** Why it matters. */
  readonly why?: string;
  /** What to do. */
  readonly advice?: string;
  /** Standard, paper or "common practice" behind it. */
  readonly source?: string;
  /** The subject that an author's answer names: a part, a port, a set of ports, a field. */
  readonly subject?: string;
}

/** A finding with its place: lines and columns count from 1 in the whole file, columns in UTF-16 units. */
export interface Diagnostic {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly severity: Severity;
  readonly rule: string;
  readonly message: string;
  readonly why: string | null;
  readonly advice: string | null;
  readonly source: string | null;
  readonly subject: string | null;
  /** The author's written reason, when the entry answers this finding. */
  readonly answer: string | null;
}
