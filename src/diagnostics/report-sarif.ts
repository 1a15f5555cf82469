import type { RuleDeclaration } from './rule-declaration.ts';
import type { Diagnostic } from './finding.ts';
import { sortedDiagnostics } from './sorted-diagnostics.ts';

/** What a SARIF log says about a rule beside its findings. */
export type DescribedRule = Pick<RuleDeclaration<unknown>, 'id' | 'title' | 'why' | 'severity'>;

/**
 * Findings as a SARIF 2.1.0 log (OASIS, Static Analysis Results Interchange Format Version 2.1.0). A finding that the
 * author answered is kept with its reason as a suppression (section 3.27.23). Columns count UTF-16 units.
 *
 * @param rules descriptions of the rules; a rule that has findings and no description is listed by its id
 */
export function reportSarif(diagnostics: readonly Diagnostic[], rules: readonly DescribedRule[] = []): string {
  const sorted = sortedDiagnostics(diagnostics);
  const ids = [...new Set([...rules.map((rule) => rule.id), ...sorted.map((diagnostic) => diagnostic.rule)])].sort();
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'seamline', rules: ids.map((id) => ruleOf(id, rules)) } },
        columnKind: 'utf16CodeUnits',
        results: sorted.map((diagnostic) => resultOf(diagnostic, ids)),
      },
    ],
  };
  return JSON.stringify(log, null, 2) + '\n';
}

function ruleOf(id: string, rules: readonly DescribedRule[]): object {
  const rule = rules.find((candidate) => candidate.id === id);
  if (rule === undefined) return { id };
  return {
    id,
    shortDescription: { text: rule.title },
    fullDescription: { text: rule.why },
    defaultConfiguration: { level: rule.severity },
  };
}

function resultOf(diagnostic: Diagnostic, ids: readonly string[]): object {
  const explained = [diagnostic.message, diagnostic.why, diagnostic.advice].filter((part) => part !== null).join(' ');
  return {
    ruleId: diagnostic.rule,
    ruleIndex: ids.indexOf(diagnostic.rule),
    level: diagnostic.severity,
    message: { text: explained },
    locations: [{ physicalLocation: { artifactLocation: { uri: addressOf(diagnostic.file) }, region: regionOf(diagnostic) } }],
    ...(diagnostic.answer === null ? {} : { suppressions: [{ kind: 'inSource', justification: diagnostic.answer }] }),
  };
}

function regionOf({ line, column, endLine, endColumn }: Diagnostic): object {
  return { startLine: line, startColumn: column, endLine, endColumn };
}

/** Relative URI reference of a path: RFC 3986 characters only, and no part before the first slash that reads as a scheme. */
function addressOf(file: string): string {
  const encoded = file.replaceAll('\\', '/').toWellFormed().split('/').map(encodeURIComponent).join('/');
  return encoded;
}
