import type { Derived } from '../derived/derived.ts';
import type { Diagnostic, Finding } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import type { NamesInReach } from '../markdown/named-directives.ts';
import { renderProse, type Prose } from '../markdown/render-prose.ts';
import type { Table } from '../tables/table.ts';
import { atTop } from './at-top.ts';
import type { EntryRecord } from './entry-record.ts';
import type { EntrySteps, SplitFile } from './entry-steps.ts';
import type { EntrySurroundings } from './entry-surroundings.ts';
import { guardedSteps, stepFailed } from './guarded-step.ts';
import { anchorOfPart, anchorOfPort, isPageId } from './page-anchors.ts';
import { pageWork, type PageWork } from './page-work.ts';
import { noPartsFile, partsFileOf } from './parts-file.ts';
import type { EntryPhoto } from './photos/photos-of-entries.ts';
import { placeEntryFindings } from './place-entry-findings.ts';
import type { PublishedPhoto } from '../corpus/published-photo.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { recordOfEntry } from './record-of-entry.ts';
import type { EntryFile } from './scan-content.ts';
import { understandEntry, type UnderstoodEntry } from './understand-entry.ts';

/** One entry read, computed, checked and rendered: its record, and its sheet where the frontmatter gave an entry. */
export interface PreparedEntry {
  readonly record: EntryRecord;
  readonly sheet: PreparedSheet | null;
  /** What only the pages need; null where nothing was to be made for them. */
  readonly pages: PageWork | null;
}

const BY_ITSELF: EntrySurroundings = { facts: new Map(), forPages: true };

/** Reads one file to its sheet. Never throws: a step that fails becomes a finding that names the step. */
export function prepareEntry(source: EntryFile, text: string, steps: EntrySteps, around: EntrySurroundings = BY_ITSELF): PreparedEntry {
  const { logs = [], photos = [] } = around;
  const findings: Finding[] = [];
  const guard = guardedSteps(findings);
  const asText: SplitFile = { data: undefined, text: '', textStart: text.length, findings: [] };
  const split = guard('frontmatter', asText, () => steps.split(source.file, text));
  const parts = guard('parts file', noPartsFile(split.data), () => partsFileOf(split.data, source));
  findings.push(...split.findings, ...parts.findings);
  const understood = understandEntry(source, parts.data, split, { steps, around, guard, findings });
  const { asStated, entry } = understood;
  const prose = guard<Prose | null>('text', null, () => proseOf(source, split, understood, steps));
  findings.push(...(prose?.findings ?? []), ...logs.flatMap(({ inEntry }) => inEntry), ...photos.flatMap((photo) => photo.findings));
  const diagnostics = placeEntryFindings({ source, text, parts, logs }, findings, entry?.answers ?? [], steps);
  const sheet = sheetOf(understood, prose, { diagnostics, steps, photos });
  const pages = sheet === null || !around.forPages ? null : drawnPages(sheet, source.file);
  if (pages?.fault !== undefined) diagnostics.push(pages.fault);
  const work = pages?.work ?? null;
  const record = recordOfEntry({ source, parts, prose, textStart: split.textStart, asStated, entry, diagnostics, work, around });
  return { record, sheet, pages: work };
}

function proseOf({ slug }: EntryFile, split: SplitFile, { entry, derived, tables }: UnderstoodEntry, steps: EntrySteps): Prose {
  const names = entry === null || derived === null ? null : namesOf(entry, derived, tables, steps);
  return renderProse({ text: split.text, startOffset: split.textStart, slug, names, isTakenId: isPageId });
}

function namesOf(entry: Entry, derived: Derived, tables: readonly Table[], steps: EntrySteps): NamesInReach {
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

/** Null where any of entry, computed values and text is missing; a finding says why. */
function sheetOf(
  { entry, derived, tables }: UnderstoodEntry,
  prose: Prose | null,
  from: { readonly diagnostics: readonly Diagnostic[]; readonly steps: EntrySteps; readonly photos: readonly EntryPhoto[] },
): PreparedSheet | null {
  if (entry === null || derived === null || prose === null) return null;
  const { placed, html, headings } = prose;
  return {
    ...{ entry, derived, diagnostics: from.diagnostics, placed, html, headings },
    tables: shownTables(tables, prose, from.steps),
    photos: publishedPhotos(entry, from.photos),
  };
}

/** The tables that the page reads: those it has no figure for, and those the author placed. The others would double the sheet's bytes. */
function shownTables(tables: readonly Table[], prose: Prose, steps: EntrySteps): readonly Table[] {
  const drawn = new Set(steps.tables.filter((table) => table.hasFigure === true).map((table) => table.id));
  return tables.filter((table) => !drawn.has(table.id) || prose.placed.includes(table.id));
}

/** In the order of the entry's list; null for one that is not published. */
function publishedPhotos(entry: Entry, photos: readonly EntryPhoto[]): readonly (PublishedPhoto | null)[] {
  return entry.photos.map((_, index) => photos.find((photo) => photo.index === index)?.published ?? null);
}

/** What the pages need of the sheet, or the finding that making it failed. */
function drawnPages(sheet: PreparedSheet, file: string): { readonly work: PageWork | null; readonly fault?: Diagnostic } {
  try {
    return { work: pageWork(sheet) };
  } catch (error) {
    return { work: null, fault: atTop(file, stepFailed('drawing', error)) };
  }
}
