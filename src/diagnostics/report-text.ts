import type { Diagnostic, Severity } from './finding.ts';
import { quotedLine } from './quoted-line.ts';
import { openDiagnostics } from './sorted-diagnostics.ts';

export interface ReportTextOptions {
  /** Severity words and pointers in colour; for terminals only. */
  readonly colour: boolean;
}

const ESCAPE = '\u001b[';
const COLOURS: Readonly<Record<Severity, string>> = { error: '31', warning: '33', note: '36' };

/**
 * Findings for people: place, severity, rule and message; the quoted line with a pointer; why, what to do, source; and a
 * line of counts at the end. Findings that the author answered are counted only.
 *
 * @param sources text of each file by the name that its diagnostics carry; a file that is not there is not quoted
 */
export function reportText(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>, options: ReportTextOptions): string {
  const open = openDiagnostics(diagnostics);
  const blocks = open.map((diagnostic) => blockOf(diagnostic, sources.get(diagnostic.file), options));
  return [...blocks, summaryLine(open, diagnostics.length - open.length)].join('\n\n') + '\n';
}

function blockOf(diagnostic: Diagnostic, text: string | undefined, options: ReportTextOptions): string {
  const { file, line, column, severity, rule, message } = diagnostic;
  const paint = (words: string): string => (options.colour ? `${ESCAPE}1;${COLOURS[severity]}m${words}${ESCAPE}0m` : words);
  const lines = [`${file}:${line}:${column} ${paint(severity)} ${rule}`, `  ${message}`];
  const quoted = text === undefined ? null : quotedLine(text, diagnostic);
  if (quoted !== null) {
    const number = String(line);
    lines.push(`  ${number} | ${quoted.line}`, `  ${' '.repeat(number.length)} | ${paintedPointer(quoted.pointer, paint)}`);
  }
  if (diagnostic.why !== null) lines.push(`  why: ${diagnostic.why}`);
  if (diagnostic.advice !== null) lines.push(`  what to do: ${diagnostic.advice}`);
  if (diagnostic.source !== null) lines.push(`  source: ${diagnostic.source}`);
  return lines.join('\n');
}

function paintedPointer(pointer: string, paint: (words: string) => string): string {
  const marks = pointer.trimStart();
  return pointer.slice(0, pointer.length - marks.length) + paint(marks);
}

function summaryLine(open: readonly Diagnostic[], answered: number): string {
  const counted = (severity: Severity): string => {
    const count = open.filter((diagnostic) => diagnostic.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  };
  const answers = answered === 0 ? '' : `, ${answered} answered by the author`;
  return `${counted('error')}, ${counted('warning')}, ${counted('note')}${answers}`;
}
