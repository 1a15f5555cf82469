import type { Diagnostic } from './finding.ts';
import { openDiagnostics } from './sorted-diagnostics.ts';

/** Findings for programs: one JSON array, sorted; findings that the author answered are left out. */
export function reportJson(diagnostics: readonly Diagnostic[]): string {
  const rows = openDiagnostics(diagnostics).map(({ file, line, column, endLine, endColumn, severity, rule, message, source }) => ({
    file,
    line,
    column,
    endLine,
    endColumn,
    severity,
    rule,
    message,
    source,
  }));
  return JSON.stringify(rows, null, 2) + '\n';
}
