/** One line of an example entry. */
export interface ExampleLine {
  readonly number: number;
  readonly text: string;
  /** Whether the example's rule must report this line. */
  readonly reported: boolean;
}

/** Mark at the end of a line that a rule must report: a comment of YAML in the data, one of HTML in the text. */
const MARK = /\s*(?:# |<!-- )finding: (?<rule>[a-z0-9-]+)(?: -->)?$/;

/** Cuts the example entry of a rule into lines; the marks are taken off, as an author's file has none. */
export function exampleLines(text: string, rule: string): readonly ExampleLine[] {
  return text
    .replace(/\n$/, '')
    .split('\n')
    .map((line, index) => {
      const mark = MARK.exec(line);
      return { number: index + 1, text: mark === null ? line : line.slice(0, mark.index), reported: mark?.groups?.['rule'] === rule };
    });
}
