/** A paragraph without any mark of Markdown in it: offsets in the text, and the number of its first line, from 1. */
export interface PlainParagraph {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly lines: number;
}

// Constructs that go on over blank lines, and white space that Markdown counts: such a text is read in the ordinary way.
const SPANS_BLANK_LINES = /```|~~~|:::|[\r\t\f\v\0]|<[!?]|<\/?(?:script|pre|style|textarea)/i;
// Anything that may be a mark of inline Markdown, of a table, of a directive or of a bare address.
const INLINE_MARK = /[\\`*_[\]<>&~|@{}=]|:[A-Za-z/]|www\.|xn--|[ ]\n|\n[^\p{L}]/iu;
const STARTS_PLAIN = /^\p{L}/u;

/**
 * The paragraphs of a text that hold nothing but words: lines that start with a letter, between blank lines, with no mark of
 * Markdown in them. None where the text has a construct that runs over blank lines, since these lines may then be part of it.
 */
export function plainParagraphs(text: string): readonly PlainParagraph[] {
  if (SPANS_BLANK_LINES.test(text)) return [];
  const found: PlainParagraph[] = [];
  let line = 1;
  let at = 0;
  while (at < text.length) {
    const gap = text.indexOf('\n\n', at);
    const end = gap === -1 ? text.length : gap;
    const block = text.slice(at, end);
    const lines = countLines(block);
    if (STARTS_PLAIN.test(block) && !INLINE_MARK.test(block) && !block.endsWith(' ') && !block.endsWith('\n')) {
      found.push({ start: at, end, line, lines: lines + 1 });
    }
    if (gap === -1) break;
    line += lines + 2;
    at = gap + 2;
  }
  return found;
}

function countLines(block: string): number {
  let count = 0;
  for (let at = block.indexOf('\n'); at !== -1; at = block.indexOf('\n', at + 1)) count += 1;
  return count;
}
