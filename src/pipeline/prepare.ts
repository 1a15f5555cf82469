import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/finding.ts';
import { sortedDiagnostics } from '../diagnostics/sorted-diagnostics.ts';
import { factsByNumber, type PartFacts } from '../corpus/part-facts/part-facts.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import { acrossFindings } from './across-findings.ts';
import { checkCorpus } from './check-corpus.ts';
import type { EntryRecord } from './entry-record.ts';
import { KNOWN_PAGES } from './known-pages.ts';
import { methodUses } from '../corpus/method-uses.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { writeSiteData } from './open-data-files.ts';
import { placeInFiles } from './place-in-files.ts';
import type { Manifest } from '../corpus/prepared.ts';
import { lostAddresses } from './published-addresses.ts';
import { readBench } from './read-bench.ts';
import { readPolicies } from './read-policies.ts';
import { readSettings } from './read-settings.ts';
import { readPartFacts } from './read-part-facts.ts';
import { scanContent } from './scan-content.ts';
import { dropSheets } from './sheet-file.ts';
import { dropPhotos } from './photos/photo-store.ts';
import { writePhotoList } from './photos/photo-list.ts';
import { writeSiteSettings } from './site-settings-file.ts';
import { writeIfChanged } from './write-if-changed.ts';
import { manifestOf } from './manifest-of.ts';
import type { PrepareOptions } from './prepare-options.ts';
import { readEntries } from './read-entries.ts';

/** Outcome of a run over the whole content folder. */
export interface Prepared {
  /** All findings of all files, sorted; answered ones included. */
  readonly diagnostics: readonly Diagnostic[];
  readonly manifest: Manifest;
  readonly counts: {
    readonly entries: number;
    readonly drafts: number;
    /** Entries that were parsed, not taken from the cache. */
    readonly parsed: number;
  };
}

/** Reads the content folder, hash first, parse later; computes, checks and renders what changed; writes what the site reads. */
export async function prepare(options: PrepareOptions): Promise<Prepared> {
  const content = resolve(options.content);
  mkdirSync(options.prepared, { recursive: true });
  const listing = scanContent(content);
  const { policies, findings: ofPolicies } = readPolicies(content);
  const { settings, findings: ofSettings } = readSettings(content, policies);
  const derating: SiteDerating = { chosen: settings.derating, own: policies };
  const { facts, findings: ofFacts } = readPartFacts(content);
  const { bench, findings: ofBench } = readBench(content);
  const { records, unread, parsed } = await readEntries(listing.entries, { facts, derating, bench }, options);
  const across = checkCorpus(content, records, KNOWN_PAGES, options.mode === 'dev' ? 'shown' : 'hidden');
  const lost = lostAddresses(content, listing.entries, records);
  const pool = options.mode === 'dev' ? records : records.filter((record) => record.status !== 'draft');
  const beside = await acrossFindings(content, pool, factsByNumber(facts), options.steps ?? null);
  const ofFiles = [
    ...listing.findings,
    ...ofSettings,
    ...ofPolicies,
    ...ofFacts,
    ...ofBench,
    ...unusedFacts(facts, records),
    ...unread,
    ...across,
    ...lost,
  ];
  const elsewhere = placeInFiles(content, ofFiles, options.steps ?? null);
  const diagnostics = sortedDiagnostics([
    ...(await elsewhere),
    ...beside.map(({ diagnostic }) => diagnostic),
    ...records.flatMap((record) => record.diagnostics),
  ]);
  const manifest = manifestOf({ site: settings, facts, bench, beside }, records, listing.entries, diagnostics, options.mode);
  if (options.mode !== 'check') writeForPages(options, records, manifest);
  const drafts = records.filter((record) => record.status === 'draft').length;
  return { diagnostics, manifest, counts: { entries: listing.entries.length, drafts, parsed } };
}

/** What the site reads over all entries. */
function writeForPages({ prepared, cache }: PrepareOptions, records: readonly EntryRecord[], manifest: Manifest): void {
  const listed = new Set(manifest.sheets.map(({ slug }) => slug));
  writeSiteSettings(prepared, manifest.site);
  writeIfChanged(join(prepared, 'manifest.json'), JSON.stringify(manifest));
  writeIfChanged(join(prepared, 'methods.json'), JSON.stringify(methodUses(records, manifest.sheets)));
  writeIfChanged(join(prepared, 'across.json'), acrossOf(records, manifest));
  writeSiteData(prepared, manifest);
  dropSheets(prepared, new Set(records.map((record) => record.slug)));
  const shown = records.filter(({ slug }) => listed.has(slug)).flatMap(({ photos }) => photos);
  writePhotoList(prepared, cache, shown);
  dropPhotos(cache, new Set(records.flatMap(({ photos }) => photos.map(({ published }) => published.digest))));
}

/** What the finder, the comparison and the search need, by slug, of the sheets that are listed and of no other; as JSON. */
function acrossOf(records: readonly EntryRecord[], { sheets }: Manifest): string {
  const bySlug = new Map(records.map((record) => [record.slug, record.across]));
  const listed = sheets.flatMap(({ slug }) => {
    const across = bySlug.get(slug) ?? null;
    return across === null ? [] : [`${JSON.stringify(slug)}:${across}`];
  });
  return `{${listed.join(',')}}`;
}

/** A fact sheet whose number no entry names is perhaps misspelt. */
function unusedFacts(facts: readonly PartFacts[], records: readonly EntryRecord[]): readonly FileFinding[] {
  const named = new Set(records.flatMap((record) => record.stated.parts.map((part) => part.number)));
  return facts
    .filter(({ number, alsoWritten }) => ![number, ...alsoWritten].some((spelling) => named.has(spelling)))
    .map(({ file, number }) => ({ file, finding: pipelineFinding('part-sheet-unused', `No entry names the part ${number}`) }));
}
