/** One line of an example entry. */
export interface ExampleLine {
  readonly number: number;
  readonly text: string;
  /** Whether the example's rule reports this line. */
  readonly reported: boolean;
}

/** Mark at the end of a line that its rule must report: a comment of YAML, or of HTML in the text. */
const MARK = /\s*(?:#\s*reported\b.*|<!--\s*reported\b.*?-->)\s*$/;

/** Cuts an example entry into lines; the marks of reported lines are taken off, as an author's file has none. */
export function exampleLines(text: string): readonly ExampleLine[] {
  return text
    .replace(/\n$/, '')
    .split('\n')
    .map((line, index) => ({ number: index + 1, text: line.replace(MARK, ''), reported: MARK.test(line) }));
}
