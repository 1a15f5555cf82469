import type { DataPath } from '../diagnostics/finding.ts';
import type { Photo, PhotoCallout, PhotoDistance } from './entry.ts';
import { didYouMean } from './nearest-word.ts';
import { listed, readFact, type ReadingContext } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';

type PhotoFields = NonNullable<EntrySource['photos']>[number];

/** A photo is framed by figures 1 to 6 across and letters A to D down. */
const ZONES_ACROSS = 6;
const ZONES_DOWN = 'ABCD';

/** Reads the photos with their callouts. `references` are those of the parts. */
export function readPhotos(context: ReadingContext, source: EntrySource['photos'], references: readonly string[]): readonly Photo[] {
  return listed<PhotoFields>(context, source, ['photos']).map(({ item, path }) => ({
    file: item.file,
    alt: item.alt ?? '',
    title: item.title ?? null,
    credit: item.credit ?? null,
    callouts: Object.entries(item.callouts ?? {}).flatMap(([part, place]) =>
      readCallout(context, part, place, [...path, 'callouts', part], references),
    ),
    scale: readScale(context, item.scale, [...path, 'scale']),
    distances: Object.entries(item.distances ?? {}).flatMap(([name, marks]) =>
      readDistance(context, name, marks, [...path, 'distances', name]),
    ),
    note: item.note ?? null,
    path,
  }));
}

function readCallout(
  context: ReadingContext,
  part: string,
  place: string,
  path: DataPath,
  references: readonly string[],
): readonly PhotoCallout[] {
  if (!references.includes(part)) {
    const advice = didYouMean(part, references) ?? undefined;
    context.findings.push(
      readingFinding('unknown-part', atKey(path), `There is no part "${part}".`, {
        subject: part,
        ...(advice === undefined ? {} : { advice }),
      }),
    );
  }
  const point = readPoint(context, place, path);
  return point === null ? [] : [{ part, x: point[0], y: point[1] }];
}

function readScale(context: ReadingContext, scale: PhotoFields['scale'], path: DataPath): Photo['scale'] {
  if (scale === undefined) return null;
  const from = readPoint(context, scale.from, [...path, 'from']);
  const to = readPoint(context, scale.to, [...path, 'to']);
  const length = readFact(context, { text: scale.length, path: [...path, 'length'], evidence: scale.evidence ?? 'measured' }, 'length');
  if (from === null || to === null || length === null) return null;
  return isNowhere(context, from, to, path) ? null : { from, to, length };
}

function readDistance(
  context: ReadingContext,
  name: string,
  marks: NonNullable<PhotoFields['distances']>[string],
  path: DataPath,
): readonly PhotoDistance[] {
  const from = readPoint(context, marks.from, [...path, 'from']);
  const to = readPoint(context, marks.to, [...path, 'to']);
  if (from === null || to === null || isNowhere(context, from, to, path)) return [];
  return [{ name, from, to, place: marks.place ?? null, path }];
}

/** Two ends at one point measure nothing, which is reported. */
function isNowhere(context: ReadingContext, from: readonly [number, number], to: readonly [number, number], path: DataPath): boolean {
  if (from[0] !== to[0] || from[1] !== to[1]) return false;
  context.findings.push(
    readingFinding('unreadable-value', atKey(path), 'Both ends stand at the same point of the photo.', {
      advice: 'Give the two ends across and down in per cent; the picker of "seamline dev" gives them on a click.',
    }),
  );
  return true;
}

/** "B4" is the middle of that zone; "42 % 61 %" is across and down. */
function readPoint(context: ReadingContext, text: string, path: DataPath): readonly [number, number] | null {
  const zone = /^(?<letter>[A-D])\s*(?<figure>[1-6])$/iu.exec(text.trim())?.groups;
  if (zone !== undefined) {
    const row = ZONES_DOWN.indexOf(zone['letter']?.toUpperCase() ?? 'A');
    return [(Number(zone['figure']) - 0.5) / ZONES_ACROSS, (row + 0.5) / ZONES_DOWN.length];
  }
  const [, across, down] = (/^(\d+(?:\.\d+)?)\s*%[\s,]*(\d+(?:\.\d+)?)\s*%$/u.exec(text.trim()) ?? []).map(Number);
  if (across !== undefined && down !== undefined && across <= 100 && down <= 100) return [across / 100, down / 100];
  const isOutside = across !== undefined || /^[a-z]\s*\d{1,2}$/iu.test(text.trim());
  const message = isOutside ? `"${text}" lies outside the photo.` : `"${text}" is no place in a photo.`;
  context.findings.push(
    readingFinding('unreadable-value', atValue(path), message, {
      advice: 'Write a zone, B4 (letters A to D down, figures 1 to 6 across), or across and down: 42 % 61 %.',
    }),
  );
  return null;
}
