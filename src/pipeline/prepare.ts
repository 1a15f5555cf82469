import { createHash } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/finding.ts';
import { hasErrors } from '../diagnostics/has-errors.ts';
import { sortedDiagnostics } from '../diagnostics/sorted-diagnostics.ts';
import { factsByNumber, factsKey, type PartFacts, type PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Bench } from '../entry/bench.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import { acrossFindings } from './across-findings.ts';
import { checkCorpus } from './check-corpus.ts';
import { codeVersion } from './code-version.ts';
import type { AcrossFacts, EntryRecord } from './entry-record.ts';
import type { EntrySteps } from './entry-steps.ts';
import { KNOWN_PAGES } from './known-pages.ts';
import { logsOfEntries } from './logs-of-entries.ts';
import { methodUses } from './method-uses.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { hasDeviceFiles } from './device-files.ts';
import { writeSiteData } from './open-data-files.ts';
import { placeInFiles } from './place-in-files.ts';
import { prepareMany, type EntryJob, type WorkerStart } from './prepare-many.ts';
import type { Manifest, SheetSummary } from '../corpus/prepared.ts';
import { hashBeside } from './read-beside.ts';
import { lostAddresses } from './published-addresses.ts';
import { readBench } from './read-bench.ts';
import { readPolicies } from './read-policies.ts';
import { readSettings } from './read-settings.ts';
import { readText } from './read-text.ts';
import { readPartFacts } from './read-part-facts.ts';
import { readRecords, writeRecords, type CachedRecord } from './record-cache.ts';
import { scanContent, type EntryFile } from './scan-content.ts';
import { dropSheets, hasSheet } from './sheet-file.ts';
import { byText } from './text-order.ts';
import { dropPhotos, hasPhoto } from './photos/photo-store.ts';
import { writePhotoList } from './photos/photo-list.ts';
import { photoStamps, type PhotoStamps } from './photos/photo-stamps.ts';
import { photosOfEntries } from './photos/photos-of-entries.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** What `prepare` is asked for. */
export interface PrepareOptions {
  /** Folder with `teardowns/` and `site.yaml`. */
  readonly content: string;
  /** Folder that the site reads: `manifest.json`, `methods.json`, `across.json` and `sheets/<slug>.sheet`. */
  readonly prepared: string;
  /** Folder for what the next run can use again. */
  readonly cache: string;
  /** `check` and `build` leave drafts and broken entries out of the manifest; `dev` shows both. */
  readonly mode: 'check' | 'build' | 'dev';
  readonly onProgress?: (done: number, total: number) => void;
  /** Called for each photo that was looked at or made. */
  readonly onPhoto?: (done: number, total: number) => void;
  /** Steps to use in place of our own, for tests; nothing is then taken from the cache. */
  readonly steps?: EntrySteps;
}

type BesideFindings = Awaited<ReturnType<typeof acrossFindings>>;

/** Outcome of a run over the whole content folder. */
export interface Prepared {
  /** All findings of all files, sorted; answered ones included. */
  readonly diagnostics: readonly Diagnostic[];
  readonly manifest: Manifest;
  readonly counts: {
    readonly entries: number;
    readonly drafts: number;
    /** Entries that were parsed, not taken from the cache. */ readonly parsed: number;
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
  writeIfChanged(join(prepared, 'manifest.json'), JSON.stringify(manifest));
  writeIfChanged(join(prepared, 'methods.json'), JSON.stringify(methodUses(records, manifest.sheets)));
  writeIfChanged(join(prepared, 'across.json'), JSON.stringify(acrossOf(records, manifest)));
  writeSiteData(prepared, manifest);
  dropSheets(prepared, new Set(records.map((record) => record.slug)));
  const shown = records.filter(({ slug }) => listed.has(slug)).flatMap(({ photos }) => photos);
  writePhotoList(prepared, cache, shown);
  dropPhotos(cache, new Set(records.flatMap(({ photos }) => photos.map(({ published }) => published.digest))));
}

async function readEntries(
  entries: readonly EntryFile[],
  { facts, derating, bench }: Pick<WorkerStart, 'facts' | 'derating' | 'bench'>,
  options: PrepareOptions,
): Promise<{ readonly records: EntryRecord[]; readonly unread: FileFinding[]; readonly parsed: number }> {
  const version = codeVersion();
  const known = options.steps === undefined ? readRecords(options.cache, version) : new Map<string, CachedRecord>();
  const byNumber = factsByNumber(facts);
  const judgedBy = `${deratingKey(derating)}${benchKey(bench)}`;
  const stamps = photoStamps(options.cache);
  const forPages = options.mode !== 'check';
  const unread: FileFinding[] = [];
  const kept: CachedRecord[] = [];
  const jobs: (EntryJob & { readonly key: string })[] = [];
  for (const source of entries) {
    const read = readText(source.path);
    if (!read.ok) {
      unread.push({ file: source.file, finding: read.finding });
      continue;
    }
    const cached = known.get(source.file);
    const key = `${read.hash}${judgedBy}`;
    if (cached?.key === key && stillHolds(cached.record, source, { facts: byNumber, stamps, folders: forPages ? options : null }))
      kept.push(cached);
    else jobs.push({ source, text: read.text, key });
  }
  const logs = await logsOfEntries(jobs, options.steps === undefined ? { cache: options.cache, version } : null);
  const photos = await photosOfEntries(jobs, {
    cache: options.cache,
    stamps,
    encode: forPages,
    onDone: options.onPhoto ?? (() => undefined),
  });
  stamps.keep();
  const withBeside = jobs.map((job) => ({ ...job, logs: logs.get(job.source.file) ?? [], photos: photos.get(job.source.file) ?? [] }));
  const fresh = await prepareMany(
    withBeside,
    { prepared: options.prepared, facts, derating, bench, forPages },
    options.steps ?? null,
    (done) => options.onProgress?.(done, jobs.length),
  );
  const all = [...kept, ...fresh.map((record, index) => ({ key: jobs[index]?.key ?? '', record }))].sort((one, other) =>
    byText(one.record.file, other.record.file),
  );
  if (options.steps === undefined && (jobs.length > 0 || known.size !== all.length)) writeRecords(options.cache, version, all);
  return { records: all.map(({ record }) => record), unread, parsed: jobs.length };
}

/** What the site says of derating as part of a key: every verdict depends on it. Empty where it says nothing. */
function deratingKey(derating: SiteDerating): string {
  if (derating.chosen === null && derating.own.length === 0) return '';
  return `-${createHash('sha256').update(JSON.stringify(derating)).digest('hex').slice(0, 16)}`;
}

/**
 * The bench as part of a key: the interval of every reading depends on its instruments, and what a value leads to on the names of its
 * methods; how they are done stands on the bench page alone. Empty where there is none.
 */
function benchKey({ instruments, methods }: Bench): string {
  if (instruments.length === 0 && methods.length === 0) return '';
  const named = methods.map(({ id, name, of }) => [id, name, of]);
  return `-${createHash('sha256')
    .update(JSON.stringify([instruments, named]))
    .digest('hex')
    .slice(0, 16)}`;
}

/** Whether a record is that of the entry as it is now; with what the pages need of it in `prepared`, where they are asked for. */
function stillHolds(
  record: EntryRecord,
  source: EntryFile,
  { facts, stamps, folders }: { readonly facts: PartFactsByNumber; readonly stamps: PhotoStamps; readonly folders: PrepareOptions | null },
): boolean {
  const numbers = record.stated.parts.map((part) => part.number);
  return (
    factsKey(numbers, facts) === record.factsKey &&
    (folders === null || hasPageWork(record, folders)) &&
    // What was not found is looked for again: the finding says what lies there instead.
    record.dependsOn.every(({ name, hash }) => hash !== null && hashBeside(source.path, name, stamps.hashOf) === hash)
  );
}

function hasPageWork(record: EntryRecord, { prepared, cache }: PrepareOptions): boolean {
  return (
    record.forPages &&
    hasSheet(prepared, record.slug, record.sheetBytes) &&
    (record.sheetBytes === null || hasDeviceFiles(prepared, record.slug)) &&
    record.photos.every(({ published }) => hasPhoto(cache, published))
  );
}

/** What the finder, the comparison and the search need, by slug, of the sheets that are listed and of no other. */
function acrossOf(records: readonly EntryRecord[], { sheets }: Manifest): Readonly<Record<string, AcrossFacts>> {
  const bySlug = new Map(records.map((record) => [record.slug, record.across]));
  return Object.fromEntries(
    sheets.flatMap(({ slug }) => {
      const across = bySlug.get(slug) ?? null;
      return across === null ? [] : [[slug, across] as const];
    }),
  );
}

/** A fact sheet whose number no entry names is perhaps misspelt. */
function unusedFacts(facts: readonly PartFacts[], records: readonly EntryRecord[]): readonly FileFinding[] {
  const named = new Set(records.flatMap((record) => record.stated.parts.map((part) => part.number)));
  return facts
    .filter(({ number, alsoWritten }) => ![number, ...alsoWritten].some((spelling) => named.has(spelling)))
    .map(({ file, number }) => ({ file, finding: pipelineFinding('part-sheet-unused', `No entry names the part ${number}`) }));
}

function manifestOf(
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
  const body = { site, sheets: newestFirst, broken, findingsAcross, partFacts, bench };
  return { ...body, digest: createHash('sha256').update(JSON.stringify(body)).digest('hex').slice(0, 32) };
}
