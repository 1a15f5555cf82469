import { runChecks } from './run-checks.ts';
import { derive } from '../../src/derived/derive.ts';
import type { Diagnostic, Finding } from '../../src/diagnostics/finding.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { placeFindings } from '../../src/entry/place-findings.ts';
import { readEntry } from '../../src/entry/read-entry.ts';

/** Everything that is said about one Markdown file. */
export interface CheckedText {
  readonly entry: Entry | null;
  readonly reading: readonly Finding[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads, derives and checks a file as the pipeline does. */
export function checkText(slug: string, text: string): CheckedText {
  const file = `teardowns/${slug}/index.md`;
  const split = parseFrontmatter(text);
  const { entry, findings } = readEntry({ slug, file, frontmatter: split.data });
  const reading = [...split.findings, ...findings];
  if (entry === null) return { entry, reading, diagnostics: placeFindings({ file, text }, reading) };
  const checked = runChecks({ entry, derived: derive(entry), text: split.text, textStart: split.textStart });
  return { entry, reading, diagnostics: placeFindings({ file, text }, [...reading, ...checked], entry.answers) };
}

/** Lines that an example marks, by rule: `# finding: rule` in the data, an HTML comment of the same words in the text. */
export function markedLines(text: string, rule: string): number[] {
  return text.split('\n').flatMap((line, index) => (new RegExp(`(?:# |<!-- )finding: ${rule}(?: -->)?$`).test(line) ? [index + 1] : []));
}
