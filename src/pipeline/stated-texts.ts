import type { StatedMaker, StatedPart, StatedPlace } from '../corpus/agreement/stated-text.ts';
import type { DataPath } from '../diagnostics/finding.ts';
import type { Entry, Part } from '../entry/entry.ts';
import type { PartsFile } from './parts-file.ts';
import { pipelineFinding } from './pipeline-rule.ts';

/** Numbered parts of an entry as it states them, before any fact sheet completes them. */
export function statedParts(entry: Entry, parts: PartsFile): readonly StatedPart[] {
  return entry.parts.flatMap((part) => {
    if (part.number === null) return [];
    const { number, maker, role } = part;
    const field = part.rating === null ? 'number' : 'rating';
    const subject = part.references.join(', ') || number;
    return [{ place: placeOf(entry, [...part.path, field], parts), number, maker, rating: part.rating?.written ?? null, role, subject }];
  });
}

/** The maker of the device and those of its parts, each name once. */
export function statedMakers(entry: Entry, parts: PartsFile): readonly StatedMaker[] {
  const ofParts = entry.parts.flatMap((part: Part) =>
    part.maker === null ? [] : [{ name: part.maker, place: placeOf(entry, [...part.path, 'maker'], parts) }],
  );
  const all = [{ name: entry.device.maker, place: placeOf(entry, ['device', 'maker'], parts) }, ...ofParts];
  return [...new Map(all.reverse().map((maker) => [maker.name, maker])).values()].reverse();
}

function placeOf({ slug, file }: Entry, path: DataPath, parts: PartsFile): StatedPlace {
  const moved = parts.inSpreadsheet(pipelineFinding('internal-fault', '', { in: 'data', path, part: 'value' }));
  const where = moved?.finding.where;
  const cell = moved === null || where?.in !== 'file' ? null : { file: moved.file, line: where.line ?? 1, column: where.column ?? 1 };
  return { slug, file, path, cell };
}
