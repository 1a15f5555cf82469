import { createHash } from 'node:crypto';
import type { Diagnostic } from '../diagnostics/finding.ts';
import { hasErrors } from '../diagnostics/has-errors.ts';
import type { PartFacts } from '../corpus/part-facts/part-facts.ts';
import type { Bench } from '../entry/bench.ts';
import type { acrossFindings } from './across-findings.ts';
import type { EntryRecord } from './entry-record.ts';
import type { Manifest, SheetSummary } from '../corpus/prepared.ts';
import type { EntryFile } from './scan-content.ts';
import { byText } from './text-order.ts';
import type { PrepareOptions } from './prepare-options.ts';

type BesideFindings = Awaited<ReturnType<typeof acrossFindings>>;

/** What the site reads of all entries: sheets newest first, with what only shows beside others. */
export function manifestOf(
  {
    site,
    facts,
    bench,
    beside,
  }: { readonly site: Manifest['site']; readonly facts: readonly PartFacts[]; readonly bench: Bench; readonly beside: BesideFindings },
  records: readonly EntryRecord[],
  entries: readonly EntryFile[],
  diagnostics: readonly Diagnostic[],
  mode: PrepareOptions['mode'],
): Manifest {
  const byFile = Map.groupBy(diagnostics, (diagnostic) => diagnostic.file.slice(0, diagnostic.file.lastIndexOf('/')));
  const ofEntry = (file: string): readonly Diagnostic[] => byFile.get(file.slice(0, file.lastIndexOf('/'))) ?? [];
  const isBroken = ({ file }: { readonly file: string }): boolean => hasErrors(ofEntry(file));
  const sheets = records
    .filter((record) => (mode === 'dev' ? !isBroken(record) : record.status === 'published'))
    .map((record) => record.summary)
    .filter((summary) => summary !== null);
  const newestFirst = sheets.sort(
    (one: SheetSummary, other: SheetSummary) => byText(other.published, one.published) || byText(one.slug, other.slug),
  );
  const broken = mode === 'dev' ? entries.filter(isBroken).map(({ slug, file }) => ({ slug, file, diagnostics: ofEntry(file) })) : [];
  const listed = new Set(newestFirst.map((sheet) => sheet.slug));
  const named = new Set(newestFirst.flatMap((sheet) => sheet.parts.map((part) => part.number)));
  const findingsAcross = Object.fromEntries(
    [...Map.groupBy(beside, ({ slug }) => slug)]
      .filter(([slug]) => listed.has(slug))
      .map(([slug, group]) => [slug, group.map(({ diagnostic }) => diagnostic)]),
  );
  const partFacts = facts.filter(({ number, alsoWritten }) => [number, ...alsoWritten].some((spelling) => named.has(spelling)));
  const digest = createHash('sha256')
    .update(JSON.stringify([site, newestFirst.map((sheet) => [sheet.slug, sheet.digest]), broken, findingsAcross, partFacts, bench]))
    .digest('hex')
    .slice(0, 32);
  return { site, sheets: newestFirst, broken, findingsAcross, partFacts, bench, digest };
}
