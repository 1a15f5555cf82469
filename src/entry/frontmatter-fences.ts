/** Where the data and the text of a file stand, in UTF-16 offsets of the whole file. */
export interface Fences {
  /** The data between the fences, without them. */
  readonly yaml: string;
  readonly yamlStart: number;
  /** The Markdown text behind the closing fence. */
  readonly text: string;
  readonly textStart: number;
}

const FENCE = /^---[ \t]*(?:\r\n|\n|\r|$)/u;
const CLOSING_FENCE = /(?:^|\n|\r)---[ \t]*(?=\r|\n|$)/u;

/**
 * Splits a file at its fences. A byte order mark before the first one is tolerated.
 * Returns which fence is missing where one is.
 */
export function splitFences(file: string): Fences | 'no opening fence' | 'no closing fence' {
  const mark = file.startsWith('\uFEFF') ? 1 : 0;
  const opening = FENCE.exec(file.slice(mark));
  if (opening === null) return 'no opening fence';
  const yamlStart = mark + opening[0].length;
  const closing = CLOSING_FENCE.exec(file.slice(yamlStart));
  if (closing === null) return 'no closing fence';
  const yamlEnd = yamlStart + closing.index + (closing[0].startsWith('-') ? 0 : 1);
  const textStart = afterLineBreak(file, yamlStart + closing.index + closing[0].length);
  return { yaml: file.slice(yamlStart, yamlEnd), yamlStart, text: file.slice(textStart), textStart };
}

function afterLineBreak(file: string, offset: number): number {
  if (file.startsWith('\r\n', offset)) return offset + 2;
  return offset < file.length ? offset + 1 : offset;
}
