import type { Diagnostic, Finding } from '../diagnostics/finding.ts';

/** A diagnostic at the place that a whole-file finding names, else at the top of the file. */
export function atTop(file: string, finding: Finding): Diagnostic {
  const { rule, severity, message, where } = finding;
  const line = where.in === 'file' ? (where.line ?? 1) : 1;
  const column = where.in === 'file' ? (where.column ?? 1) : 1;
  const reasons = {
    why: finding.why ?? null,
    advice: finding.advice ?? null,
    source: finding.source ?? null,
    subject: finding.subject ?? null,
  };
  return { file, line, column, endLine: line, endColumn: column, severity, rule, message, ...reasons, answer: null };
}
