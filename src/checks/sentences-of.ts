/** One sentence of the prose, with its offsets in the Markdown text. */
export interface Sentence {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** What is not prose: fenced and inline code, HTML comments, addresses of links and pictures, table rules. */
const NOT_PROSE = [
  /^(`{3,}|~{3,})[^\n]*\n[\s\S]*?(?:^\1[^\n]*$|(?![\s\S]))/gm,
  /<!--[\s\S]*?(?:-->|(?![\s\S]))/g,
  /`[^`\n]*`/g,
  /\]\([^)\n]*\)/g,
  /https?:\/\/\S+/g,
];

/**
 * The sentences of a Markdown text. What is not prose is blanked, so that offsets hold; a sentence ends at a full stop,
 * question or exclamation mark before a space, at an empty line, and where a heading, list item or table row starts.
 */
export function sentencesOf(markdown: string): Sentence[] {
  const prose = NOT_PROSE.reduce((text, pattern) => text.replace(pattern, blanked), markdown);
  const sentences: Sentence[] = [];
  let start = 0;
  for (const match of prose.matchAll(/[.?!](?=\s|$)|\n[ \t\r]*\n|\n(?=[ \t]*(?:[#|>*+-]|\d+\.)[ \t|]?)|$/g)) {
    const end = match.index + (/[.?!]/.test(match[0]) ? 1 : 0);
    const piece = prose.slice(start, end);
    if (piece.trim() !== '') {
      const indent = piece.length - piece.trimStart().length;
      sentences.push({ text: piece.trim(), start: start + indent, end: start + indent + piece.trim().length });
    }
    start = end;
  }
  return sentences;
}

/** Whether a sentence warns against what it names. */
export function isWarningAgainst(sentence: string): boolean {
  return /\b(?:never|not|no|cannot|don['’]t|doesn['’]t|isn['’]t|avoid|myth|wrong)\b/i.test(sentence);
}

function blanked(piece: string): string {
  return piece.replace(/[^\n]/g, ' ');
}
