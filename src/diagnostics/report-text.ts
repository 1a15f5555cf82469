import type { Diagnostic, Severity } from './finding.ts';
import { linesOf, quotedLine } from './quoted-line.ts';
import { openDiagnostics } from './sorted-diagnostics.ts';

export interface ReportTextOptions {
  /** Severity words and pointers in colour; for terminals only. */
  readonly colour: boolean;
}

/** Findings that are seen at a glance. */
const SHORT = 3;
/** Files named at the end. */
const MOST_FILES = 30;

const ESCAPE = '\u001b[';
const COLOURS: Readonly<Record<Severity, string>> = { error: '31', warning: '33', note: '36' };

/**
 * Findings for people: place, severity, rule and message; the quoted line with a pointer; why, what to do, source; and a
 * line of counts at the end, with the files that have errors where the report is long. What was said of a rule once is not
 * said again: the place of the first time is. Findings that the author answered are counted only.
 *
 * @param sources text of each file by the name that its diagnostics carry; a file that is not there is not quoted
 */
export function reportText(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>, options: ReportTextOptions): string {
  const open = openDiagnostics(diagnostics);
  const told = new Map<string, string>();
  const lines = new Map<string, readonly string[] | null>();
  const blocks = open.map((diagnostic) =>
    [...headOf(diagnostic, linesIn(diagnostic.file, sources, lines), options), ...reasonsOf(diagnostic, told)].join('\n'),
  );
  const end = [summaryLine(open, diagnostics.length - open.length), ...(open.length > SHORT ? filesWithErrors(open) : [])];
  return [...blocks, end.join('\n')].join('\n\n') + '\n';
}

/** Lines of a file, taken apart once for all its findings; null where its text is not there. */
function linesIn(
  file: string,
  sources: ReadonlyMap<string, string>,
  known: Map<string, readonly string[] | null>,
): readonly string[] | null {
  const held = known.get(file);
  if (held !== undefined) return held;
  const text = sources.get(file);
  const lines = text === undefined ? null : linesOf(text);
  known.set(file, lines);
  return lines;
}

function headOf(diagnostic: Diagnostic, source: readonly string[] | null, options: ReportTextOptions): string[] {
  const { file, line, column, severity, rule, message } = diagnostic;
  const paint = (words: string): string => (options.colour ? `${ESCAPE}1;${COLOURS[severity]}m${words}${ESCAPE}0m` : words);
  const lines = [`${file}:${line}:${column} ${paint(severity)} ${rule}`, `  ${message}`];
  const quoted = source === null ? null : quotedLine(source, diagnostic);
  if (quoted !== null) {
    const number = String(line);
    lines.push(`  ${number} | ${quoted.line}`, `  ${' '.repeat(number.length)} | ${paintedPointer(quoted.pointer, paint)}`);
  }
  return lines;
}

/** Why, what to do and source; for a rule that said the same before, the place where it did. */
function reasonsOf({ file, line, column, rule, why, advice, source }: Diagnostic, told: Map<string, string>): string[] {
  const reasons = [
    ...(why === null ? [] : [`  why: ${why}`]),
    ...(advice === null ? [] : [`  what to do: ${advice}`]),
    ...(source === null ? [] : [`  source: ${source}`]),
  ];
  if (reasons.length === 0) return [];
  const key = [rule, ...reasons].join('\n');
  const first = told.get(key);
  if (first !== undefined) return [`  why and what to do: as at ${first}`];
  told.set(key, `${file}:${line}:${column}`);
  return reasons;
}

/** The place of the first error of each file, so that errors are found under hundreds of notes. */
function filesWithErrors(open: readonly Diagnostic[]): string[] {
  const byFile = [
    ...Map.groupBy(
      open.filter(({ severity }) => severity === 'error'),
      ({ file }) => file,
    ),
  ];
  if (byFile.length === 0) return [];
  const rows = byFile.slice(0, MOST_FILES).map(([file, errors]) => {
    const first = errors[0];
    const place = first === undefined ? file : `${file}:${first.line}:${first.column}`;
    return `  ${place} ${errors.length === 1 ? '1 error' : `first of ${errors.length} errors`}`;
  });
  const more = byFile.length > MOST_FILES ? [`  and ${byFile.length - MOST_FILES} files more`] : [];
  return ['errors are in:', ...rows, ...more];
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
