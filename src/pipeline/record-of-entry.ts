import { factsKey, type PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import type { Prose } from '../markdown/render-prose.ts';
import type { EntryRecord } from './entry-record.ts';
import type { EntrySurroundings } from './entry-surroundings.ts';
import type { PageWork } from './page-work.ts';
import type { PartsFile } from './parts-file.ts';
import type { EntryFile } from './scan-content.ts';
import { statedMakers, statedParts } from './stated-texts.ts';

/** Everything of one entry that its record is made of. */
export interface Recorded {
  readonly source: EntryFile;
  readonly parts: PartsFile;
  /** Null where the text could not be rendered. */
  readonly prose: Prose | null;
  /** Offset of the text in the file. */
  readonly textStart: number;
  /** The entry before fact sheets and bench. */
  readonly asStated: Entry | null;
  readonly entry: Entry | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly work: PageWork | null;
  readonly around: EntrySurroundings;
}

/** What is kept of an entry for the next run and for comparing it with others. */
export function recordOfEntry(from: Recorded): EntryRecord {
  const { source, parts, entry, work, diagnostics, around } = from;
  const { logs = [], photos = [], forPages } = around;
  return {
    slug: source.slug,
    file: source.file,
    status: entry?.status ?? 'unreadable',
    formerAddresses: entry?.formerAddresses ?? [],
    diagnostics,
    forPages,
    summary: work?.summary ?? null,
    uses: work?.uses ?? [],
    across: work === null ? null : JSON.stringify(work.across),
    ...recordedText(from),
    ...recordedStatements(from.asStated, parts, around.facts),
    dependsOn: [...parts.dependsOn, ...[...logs, ...photos].map(({ file, hash }) => ({ name: file, hash }))],
    photos: photos.flatMap(({ published, hash }) => (published === null || hash === null ? [] : [{ published, hash }])),
    sheetBytes: work?.bytes.length ?? null,
  };
}

function recordedStatements(asStated: Entry | null, parts: PartsFile, facts: PartFactsByNumber): Pick<EntryRecord, 'stated' | 'factsKey'> {
  if (asStated === null) return { stated: { parts: [], makers: [], answers: [] }, factsKey: factsKey([], facts) };
  const numbers = asStated.parts.map((part) => part.number).filter((number) => number !== null);
  return {
    stated: { parts: statedParts(asStated, parts), makers: statedMakers(asStated, parts), answers: asStated.answers },
    factsKey: factsKey(numbers, facts),
  };
}

/** Links and pictures of the text with their offsets in the file. */
function recordedText({ prose, textStart }: Recorded): Pick<EntryRecord, 'links' | 'images'> {
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
