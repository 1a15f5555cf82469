import type { Diagnostic } from '../../src/diagnostics/finding.ts';

/** A finding on one file, everything but what a test cares for filled in. */
export function aDiagnostic(more: Partial<Diagnostic>): Diagnostic {
  const line = more.line ?? 1;
  const column = more.column ?? 1;
  return {
    file: 'teardowns/lm-q100/index.md',
    line,
    column,
    endLine: line,
    endColumn: column + 1,
    severity: 'warning',
    rule: 'port-above-own-limit',
    message: 'C1 gets 120 W.',
    why: null,
    advice: null,
    source: null,
    subject: null,
    answer: null,
    ...more,
  };
}
