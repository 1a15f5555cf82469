import { feedParts, type FactContradiction } from '../corpus/part-facts/feed-parts.ts';
import { factsKey, type PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Derived } from '../derived/derived.ts';
import type { Diagnostic, Finding } from '../diagnostics/finding.ts';
import { doneByMethod } from '../derived/bench/done-by-method.ts';
import type { UnknownMethod } from '../derived/bench/methods-named.ts';
import type { UnknownInstrument } from '../derived/bench/instruments-named.ts';
import { logsOnBench } from '../derived/bench/logs-on-bench.ts';
import { readOnBench } from '../derived/bench/read-on-bench.ts';
import { NO_BENCH, type Bench } from '../entry/bench.ts';
import type { Entry } from '../entry/entry.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import type { NamesInReach } from '../markdown/named-directives.ts';
import { renderProse, type Prose } from '../markdown/render-prose.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import type { Table } from '../tables/table.ts';
import type { EntryRecord } from './entry-record.ts';
import type { EntrySteps, SplitFile } from './entry-steps.ts';
import type { EntryLog } from './logs-of-entries.ts';
import type { EntryPhoto } from './photos/photos-of-entries.ts';
import { partsFileOf, type PartsFile } from './parts-file.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import type { PublishedPhoto } from '../corpus/published-photo.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import type { EntryFile } from './scan-content.ts';
import { statedMakers, statedParts } from './stated-texts.ts';
import { pageWork, type PageWork } from './page-work.ts';
import { anchorOfPart, anchorOfPort, isPageId } from './page-anchors.ts';

/** One entry read, computed, checked and rendered: its record, and its sheet where the frontmatter gave an entry. */
export interface PreparedEntry {
  readonly record: EntryRecord;
  readonly sheet: PreparedSheet | null;
  /** What only the pages need; null where nothing was to be made for them. */
  readonly pages: PageWork | null;
}

/** What one entry is prepared with. */
export interface EntrySurroundings {
  readonly facts: PartFactsByNumber;
  /** Whether what only the pages need is made too; `check` does without. */
  readonly forPages: boolean;
  /** What the site says of derating. */
  readonly derating?: SiteDerating;
  /** Instruments of the bench; none where the site has no bench file. */
  readonly bench?: Bench;
  /** The logs that it names, read. */
  readonly logs?: readonly EntryLog[];
  /** The photos that it names, looked at. */
  readonly photos?: readonly EntryPhoto[];
}

const BY_ITSELF: EntrySurroundings = { facts: new Map(), forPages: true };

/** Reads one file to its sheet. Never throws: a step that fails becomes a finding that names the step. */
export function prepareEntry(source: EntryFile, text: string, steps: EntrySteps, around: EntrySurroundings = BY_ITSELF): PreparedEntry {
  const { facts, forPages, derating, bench = NO_BENCH, logs = [], photos = [] } = around;
  const findings: Finding[] = [];
  const guard = <T>(step: string, otherwise: T, run: () => T): T => {
    try {
      return run();
    } catch (error) {
      findings.push(pipelineFinding('internal-fault', `The step "${step}" failed on this entry: ${errorWords(error)}`));
      return otherwise;
    }
  };
  const asText: SplitFile = { data: undefined, text: '', textStart: text.length, findings: [] };
  const split = guard('frontmatter', asText, () => steps.split(source.file, text));
  findings.push(...split.findings);
  const parts = partsFileOf(split.data, source);
  findings.push(...parts.findings);
  const frontmatter = parts.data;
  const read =
    frontmatter === undefined ? null : guard('entry', null, () => steps.read({ slug: source.slug, file: source.file, frontmatter }));
  findings.push(...(read?.findings ?? []));
  const asStated = read?.entry ?? null;
  const fed = asStated === null ? null : feedParts(asStated, facts);
  findings.push(...(fed?.contradictions ?? []).map(contradictionFinding));
  const onBench = fed === null ? null : readOnBench(fed.entry, bench);
  findings.push(...(onBench?.unknown ?? []).map(unknownInstrumentFinding));
  const byMethod = onBench === null ? null : doneByMethod(onBench.entry, bench);
  findings.push(...(byMethod?.unknown ?? []).map(unknownMethodFinding));
  const entry = byMethod?.entry ?? null;
  const derived =
    entry === null
      ? null
      : guard('derived', null, () => steps.derive(entry, logsOnBench(logSummaries(logs, entry), entry, bench), derating));
  const tables =
    entry === null || derived === null
      ? []
      : steps.tables
          .map((table) => guard(`table ${table.id}`, null, () => table.run({ entry, derived })))
          .filter((table) => table !== null);
  if (entry !== null && derived !== null) {
    const input = { entry, derived, text: split.text, textStart: split.textStart };
    for (const check of steps.checks) findings.push(...guard(`check ${check.id}`, [], () => check.run(input)));
  }
  const prose = guard<Prose | null>('text', null, () =>
    renderProse({
      text: split.text,
      startOffset: split.textStart,
      slug: source.slug,
      names: namesOf(entry, derived, tables, steps),
      isTakenId: isPageId,
    }),
  );
  findings.push(...(prose?.findings ?? []));
  findings.push(...logs.flatMap(({ inEntry }) => inEntry), ...photos.flatMap((photo) => photo.findings));
  const { here, elsewhere } = splitByFile(findings, parts, inLogFiles(source, logs));
  const diagnostics = [...placed(source, text, here, entry, steps), ...elsewhere.map(({ file, finding }) => atTop(file, finding))];
  const sheet =
    entry === null || derived === null || prose === null
      ? null
      : {
          ...{ entry, derived, diagnostics, tables: shownTables(tables, prose, steps) },
          ...{ placed: prose.placed, html: prose.html, headings: prose.headings, photos: publishedPhotos(entry, photos) },
        };
  const pages = sheet === null || !forPages ? null : drawnPages(sheet, source.file);
  if (pages?.fault !== undefined) diagnostics.push(pages.fault);
  const numbers = (asStated?.parts ?? []).map((part) => part.number).filter((number) => number !== null);
  const across = {
    stated: {
      parts: asStated === null ? [] : statedParts(asStated, parts),
      makers: asStated === null ? [] : statedMakers(asStated, parts),
      answers: asStated?.answers ?? [],
    },
    factsKey: factsKey(numbers, facts),
  };
  const record: EntryRecord = {
    slug: source.slug,
    file: source.file,
    status: entry?.status ?? 'unreadable',
    formerAddresses: entry?.formerAddresses ?? [],
    diagnostics,
    forPages,
    summary: pages?.work?.summary ?? null,
    uses: pages?.work?.uses ?? [],
    across: pages?.work?.across ?? null,
    ...recordedText(prose, split.textStart),
    ...across,
    dependsOn: [...parts.dependsOn, ...[...logs, ...photos].map(({ file, hash }) => ({ name: file, hash }))],
    photos: photos.flatMap(({ published, hash }) => (published === null || hash === null ? [] : [{ published, hash }])),
    sheetBytes: pages?.work?.bytes.length ?? null,
  };
  return { record, sheet, pages: pages?.work ?? null };
}

/** In the order of the entry's list; null for one that is not published. */
function publishedPhotos(entry: Entry, photos: readonly EntryPhoto[]): readonly (PublishedPhoto | null)[] {
  return entry.photos.map((_, index) => photos.find((photo) => photo.index === index)?.published ?? null);
}

/** The logs that could be read, each with its port by the name that the entry gives it. */
function logSummaries(logs: readonly EntryLog[], entry: Entry): readonly LogSummary[] {
  return logs
    .map(({ summary }) => summary)
    .filter((summary) => summary !== null)
    .map((summary) => ({ ...summary, port: entry.logs.find(({ id }) => id === summary.id)?.port ?? summary.port }));
}

function inLogFiles({ file }: EntryFile, logs: readonly EntryLog[]): readonly FileFinding[] {
  const folder = file.slice(0, file.lastIndexOf('/'));
  return logs.flatMap((log) => log.inFile.map((finding) => ({ file: `${folder}/${log.file}`, finding })));
}

/** What the pages need of the sheet, or the finding that making it failed. */
function drawnPages(sheet: PreparedSheet, file: string): { readonly work: PageWork | null; readonly fault?: Diagnostic } {
  try {
    return { work: pageWork(sheet) };
  } catch (error) {
    const fault = pipelineFinding('internal-fault', `The step "drawing" failed on this entry: ${errorWords(error)}`);
    return { work: null, fault: atTop(file, fault) };
  }
}

function contradictionFinding({ part, field, message }: FactContradiction): Finding {
  const finding = pipelineFinding('part-against-fact-sheet', message, { in: 'data', path: [...part.path, field], part: 'value' });
  return { ...finding, subject: part.references.join(', ') };
}

function unknownInstrumentFinding({ path, message }: UnknownInstrument): Finding {
  return pipelineFinding('instrument-unknown', message, { in: 'data', path, part: 'value' });
}

function unknownMethodFinding({ path, message }: UnknownMethod): Finding {
  return pipelineFinding('method-unknown', message, { in: 'data', path, part: 'value' });
}

function namesOf(entry: Entry | null, derived: Derived | null, tables: readonly Table[], steps: EntrySteps): NamesInReach | null {
  if (entry === null || derived === null) return null;
  return {
    values: derived.named,
    showValue: steps.showValue,
    parts: new Map(entry.parts.flatMap((part) => part.references.map((reference) => [reference, anchorOfPart(reference)] as const))),
    ports: new Map(entry.ports.map((port) => [port.id, anchorOfPort(port.id)])),
    photos: entry.photos.map(({ file }) => file),
    methods: steps.methods,
    tables: new Set(tables.map((table) => table.id)),
    allTables: new Set(steps.tables.map((table) => table.id)),
  };
}

/** Findings about parts of a spreadsheet belong into the spreadsheet. */
function splitByFile(
  findings: readonly Finding[],
  parts: PartsFile,
  ofLogs: readonly FileFinding[],
): { readonly here: readonly Finding[]; readonly elsewhere: readonly FileFinding[] } {
  const moved = findings.map((finding) => ({ finding, to: parts.inSpreadsheet(finding) }));
  return {
    here: moved.filter(({ to }) => to === null).map(({ finding }) => finding),
    elsewhere: [...parts.elsewhere, ...moved.map(({ to }) => to).filter((to) => to !== null), ...ofLogs],
  };
}

/** Places the findings; where placing itself fails, they are reported at the top of the file. */
function placed(
  source: EntryFile,
  text: string,
  findings: readonly Finding[],
  entry: Entry | null,
  steps: EntrySteps,
): readonly Diagnostic[] {
  try {
    return steps.place({ file: source.file, text }, findings, entry?.answers ?? []);
  } catch (error) {
    const fault = pipelineFinding('internal-fault', `The step "places" failed on this entry: ${errorWords(error)}`);
    return [...findings, fault].map((finding) => atTop(source.file, finding));
  }
}

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

/** The tables that the page reads: those it has no figure for, and those the author placed. The others would double the sheet's bytes. */
function shownTables(tables: readonly Table[], prose: Prose, steps: EntrySteps): readonly Table[] {
  const drawn = new Set(steps.tables.filter((table) => table.hasFigure === true).map((table) => table.id));
  return tables.filter((table) => !drawn.has(table.id) || prose.placed.includes(table.id));
}

/** Links and pictures of the text with their offsets in the file. */
function recordedText(prose: Prose | null, textStart: number): Pick<EntryRecord, 'links' | 'images'> {
  return {
    links: (prose?.links ?? []).map(({ path, fragment, written, stretch }) => ({
      path,
      fragment,
      written,
      start: stretch.start + textStart,
      end: stretch.end + textStart,
    })),
    images: (prose?.images ?? []).map(({ path, stretch }) => ({ path, start: stretch.start + textStart, end: stretch.end + textStart })),
  };
}

function errorWords(error: unknown): string {
  return error instanceof Error ? (error.message.split('\n', 1)[0] ?? error.name) : String(error);
}
