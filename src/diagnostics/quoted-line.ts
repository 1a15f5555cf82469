import type { Diagnostic } from './finding.ts';
import { terminalWidth } from './terminal-width.ts';

/** A source line with a pointer under the span concerned; both start with the same margin. */
export interface QuotedLine {
  readonly line: string;
  readonly pointer: string;
}

/** Most characters of a line that are quoted: a paragraph of prose is one line. */
const MOST_CHARACTERS = 100;
const TAB = '    ';

/** Lines of a text as diagnostics count them. */
export function linesOf(text: string): readonly string[] {
  return text.split(/\r\n|\n|\r/);
}

/** The line that a diagnostic points into, cut to the neighbourhood of its span; null where there is no such line. */
export function quotedLine(lines: readonly string[], diagnostic: Diagnostic): QuotedLine | null {
  const whole = lines[diagnostic.line - 1];
  if (whole === undefined) return null;
  const start = Math.min(Math.max(diagnostic.column - 1, 0), whole.length);
  const sameLine = diagnostic.endLine === diagnostic.line;
  const end = sameLine ? Math.min(Math.max(diagnostic.endColumn - 1, start), whole.length) : whole.length;
  const from = start > MOST_CHARACTERS / 2 && whole.length > MOST_CHARACTERS ? onCharacter(whole, start - MOST_CHARACTERS / 2) : 0;
  const to = whole.length - from > MOST_CHARACTERS ? onCharacter(whole, from + MOST_CHARACTERS) : whole.length;
  const before = (from > 0 ? '… ' : '') + printable(whole.slice(from, start));
  const spanned = printable(whole.slice(start, Math.min(end, to)));
  const after = printable(whole.slice(Math.min(end, to), to)) + (to < whole.length ? ' …' : '');
  const marks = '^'.repeat(Math.max(1, terminalWidth(spanned)));
  return { line: (before + spanned + after).trimEnd(), pointer: ' '.repeat(terminalWidth(before)) + marks };
}

/** Not between the two halves of one character. */
function onCharacter(text: string, offset: number): number {
  const unit = text.charCodeAt(offset);
  return unit >= 0xdc00 && unit <= 0xdfff ? offset + 1 : offset;
}

/** Tabs as spaces, and what could steer a terminal as a replacement character. */
function printable(text: string): string {
  return text.replaceAll('\t', TAB).replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '\ufffd');
}
