import type { Diagnostic } from './finding.ts';

/** Diagnostics by file, line, column and rule, in code-unit order, so that the same findings always print alike. */
export function sortedDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(
    (one, other) =>
      compareText(one.file, other.file) ||
      one.line - other.line ||
      one.column - other.column ||
      compareText(one.rule, other.rule) ||
      compareText(one.message, other.message),
  );
}

/** Those that the author has not answered: an answered finding is published as a footnote and no longer reported. */
export function openDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return sortedDiagnostics(diagnostics).filter((diagnostic) => diagnostic.answer === null);
}

function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
