import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runChecks } from '../checks/run-checks.ts';
import { derive } from '../../src/derived/derive.ts';
import type { Derived } from '../../src/derived/derived.ts';
import type { Finding } from '../../src/diagnostics/finding.ts';
import { answerAmong } from '../../src/entry/answer-for.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../src/entry/read-entry.ts';

/** An entry of a folder, read, computed and checked as a build would. */
export interface CheckedEntry {
  readonly slug: string;
  readonly entry: Entry;
  readonly derived: Derived;
  /** Findings of the reader and of all checks. */
  readonly findings: readonly Finding[];
  /** The Markdown text behind the data. */
  readonly text: string;
}

/** Reads `<folder>/<slug>/index.md` of every slug, in the order of the names. @throws where an entry cannot be read at all. */
export function entriesIn(folder: string): readonly CheckedEntry[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((item) => item.isDirectory())
    .map((item) => item.name)
    .sort()
    .map((slug) => checkedEntry(slug, readFileSync(join(folder, slug, 'index.md'), 'utf8')));
}

function checkedEntry(slug: string, file: string): CheckedEntry {
  const parsed = parseFrontmatter(file);
  const { entry, findings } = readEntry({ slug, file: `${slug}/index.md`, frontmatter: parsed.data });
  if (entry === null) throw new Error(`${slug}: ${[...parsed.findings, ...findings].map((finding) => finding.message).join('; ')}`);
  const derived = derive(entry);
  const checked = runChecks({ entry, derived, text: parsed.text, textStart: parsed.textStart });
  return { slug, entry, derived, findings: [...parsed.findings, ...findings, ...checked], text: parsed.text };
}

/** The entry of that slug. @throws where there is none. */
export function bySlug(entries: readonly CheckedEntry[], slug: string): CheckedEntry {
  const found = entries.find((candidate) => candidate.slug === slug);
  if (found === undefined) throw new Error(`no entry ${slug}`);
  return found;
}

/** "capacitor-voltage-margin at C5", sorted, for comparison with what an entry is meant to show. */
export function saidOf({ findings }: CheckedEntry, severities: readonly Finding['severity'][]): readonly string[] {
  return findings
    .filter((finding) => severities.includes(finding.severity))
    .map(nameOf)
    .sort();
}

/** The same, of those that the author answers in the entry. */
export function answeredIn({ entry, findings }: CheckedEntry): readonly string[] {
  return findings
    .filter((finding) => answerAmong(entry.answers, finding) !== null)
    .map(nameOf)
    .sort();
}

function nameOf(finding: Finding): string {
  return finding.subject === undefined ? finding.rule : `${finding.rule} at ${finding.subject}`;
}
