import type { Diagnostic } from './finding.ts';

/** Whether findings stop publishing: an error that its author has not answered. */
export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.severity === 'error' && diagnostic.answer === null);
}
