import type { Rating } from '../units/quantity.ts';
import type { Role } from '../roles/role.ts';
import { reportDuplicates } from './duplicate-references.ts';
import type { Part } from './entry.ts';
import { didYouMean } from './nearest-word.ts';
import { countOf } from './part-count.ts';
import { FITTINGS, type Line, type PartFields, partOf, referencesOf } from './part-line.ts';
import { GROUPS_WITHOUT_STAGE, type KnownStages, reportMisplacedRole, reportUnknownRole, roleInStage } from './part-role.ts';
import { readRatingOnce } from './remembered-reading.ts';
import { isYes, namesOf, readRatingFact, type ReadingContext, reportRemarks, textsOf } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import { type Named, type Resolved, resolveRepetition } from './repetition.ts';
import { reportStrangeDimensions } from './strange-dimensions.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

/** Reads the parts in the order in which they stand. A list in a spreadsheet is brought into this shape before the entry is read. */
export function readParts(context: ReadingContext, source: EntrySource['parts'], stages: KnownStages): readonly Part[] {
  if (source === undefined || typeof source === 'string') return [];
  for (const group of Object.keys(source)) reportUnknownGroup(context, group, stages);
  const lines = Object.entries(source).flatMap(([stage, parts]) =>
    Object.entries(parts).map(([key, value]): Line => ({ key, stage, value, path: ['parts', stage, key] })),
  );
  const parts = lines.flatMap((line) => readLine(context, line, lines, stages) ?? []);
  reportDuplicates(context, lines);
  return parts;
}

function reportUnknownGroup(context: ReadingContext, group: string, stages: KnownStages): void {
  const known = [...stages.names, ...GROUPS_WITHOUT_STAGE];
  if (known.includes(group)) return;
  const advice = didYouMean(group, known) ?? `Blocks here: ${known.join(', ')}.`;
  context.findings.push(
    readingFinding('unknown-stage', atKey(['parts', group]), `Parts stand under "${group}", which is no block of this entry.`, {
      advice,
      subject: group,
    }),
  );
}

function readLine(context: ReadingContext, line: Line, lines: readonly Line[], stages: KnownStages): Part | null {
  if (typeof line.value !== 'string') return readGroup(context, line, line.value, lines, stages);
  const fitting = FITTINGS[line.value.trim()];
  const kind = stages.kinds.get(line.stage);
  if (fitting !== undefined) {
    const role = roleInStage(line.key, kind);
    if (role !== null) return partOf(line, { role, references: [], fitting });
    const message = `"${line.key}" names no role, so it cannot be told what is ${line.value.trim()}.`;
    context.findings.push(
      readingFinding('unknown-role', atKey(line.path), message, {
        advice: 'Name the role: "X capacitor: absent", or "C6: bulk capacitor, not fitted".',
      }),
    );
    return null;
  }
  return readShortLine(context, line, line.value, stages);
}

/** "bulk capacitor, 120 µF 420 V": the role up to the first comma, the rating behind it. */
function readShortLine(context: ReadingContext, line: Line, value: string, stages: KnownStages): Part | null {
  const comma = value.indexOf(',');
  const split = comma === -1 ? splitEvidence(value).text.length : comma;
  const words = value.slice(0, split).trim();
  const kind = stages.kinds.get(line.stage);
  const role = roleInStage(words, kind);
  if (role === null) {
    reportUnknownRole(context, words, kind, line.path, { start: 0, end: split });
    return null;
  }
  const references = referencesOf(line.key);
  reportMisplacedRole(context, role, kind, line.path, references.join(', '));
  const rest = comma === -1 ? '' : value.slice(comma + 1);
  const fitting = FITTINGS[rest.trim()];
  if (fitting !== undefined || rest.trim() === '') {
    return partOf(line, { role, references, fitting: fitting ?? 'fitted', evidence: splitEvidence(value).evidence ?? 'marked' });
  }
  const shift = comma + 1 + (rest.length - rest.trimStart().length);
  const { rating, evidence } = readRatingFact(context, { text: rest.trim(), path: line.path, evidence: 'marked' }, role.bareNumber, shift);
  reportStrangeDimensions(context, role, rating, line.path, shift);
  return partOf(line, {
    role,
    references,
    fitting: 'fitted',
    rating: shiftedBy(rating, shift),
    evidence,
    ...countOf(context, role, line.path, rating, undefined, undefined),
  });
}

function shiftedBy(rating: Rating | null, shift: number): Rating | null {
  if (rating === null || shift === 0) return rating;
  const moved = <T extends { readonly span: { readonly start: number; readonly end: number } }>(piece: T): T => ({
    ...piece,
    span: { start: piece.span.start + shift, end: piece.span.end + shift },
  });
  return { ...rating, quantities: rating.quantities.map(moved), marks: rating.marks.map(moved) };
}

function readGroup(context: ReadingContext, line: Line, fields: PartFields, lines: readonly Line[], stages: KnownStages): Part | null {
  const resolved = resolveRepetition(context, { fields, path: line.path }, (name) => groupOf(lines, name), {
    rule: 'unknown-part',
    thing: 'part',
    known: () => lines.flatMap(({ key }) => referencesOf(key)),
  });
  const kind = stages.kinds.get(line.stage);
  const references = referencesOf(line.key);
  const role = roleOfGroup(context, line, resolved, stages);
  if (role === null) return null;
  reportMisplacedRole(context, role, kind, resolved.placeOf('role'), references.join(', '));
  const all = resolved.fields;
  const read =
    all.rating === undefined
      ? { rating: null, evidence: all.evidence ?? 'marked' }
      : readRatingFact(
          context,
          { text: all.rating, path: resolved.placeOf('rating'), evidence: all.evidence ?? 'marked' },
          role.bareNumber,
        );
  reportStrangeDimensions(context, role, read.rating, resolved.placeOf('rating'));
  return {
    ...partOf(line, {
      role,
      references,
      rating: read.rating,
      evidence: read.evidence,
      fitting: isYes(all.fitted) === false ? 'not fitted' : 'fitted',
    }),
    ...countOf(context, role, resolved.placeOf('rating'), read.rating, all.count, all.arrangement),
    alsoIn: readAlsoIn(context, resolved, stages),
    maker: all.maker ?? null,
    number: all.number ?? null,
    marking: all.marking ?? null,
    package: all.package ?? null,
    technology: all.technology ?? null,
    measured: readMeasured(context, resolved, role),
    alsoStated: textsOf(all['also stated']),
    datasheet: all.datasheet ?? null,
    note: all.note ?? null,
  };
}

/** The group that a reference names; a short line names its role and rating. */
function groupOf(lines: readonly Line[], name: string): Named<PartFields> | null {
  const line = lines.find(({ key }) => key === name || referencesOf(key).includes(name));
  if (line === undefined) return null;
  if (typeof line.value !== 'string') return { fields: line.value, path: line.path };
  const [role, ...rest] = line.value.split(',');
  const rating = rest.join(',').trim();
  return { fields: { ...(role === undefined ? {} : { role: role.trim() }), ...(rating === '' ? {} : { rating }) }, path: line.path };
}

function roleOfGroup(context: ReadingContext, line: Line, resolved: Resolved<PartFields>, stages: KnownStages): Role | null {
  const words = resolved.fields.role;
  if (words === undefined) {
    const message = `${line.key} has no role.`;
    context.findings.push(
      readingFinding('missing-field', atKey(line.path), message, { advice: 'Add role: what it does in its block.', subject: line.key }),
    );
    return null;
  }
  const path = resolved.placeOf('role');
  const home = typeof path[1] === 'string' ? path[1] : line.stage;
  const role = roleInStage(words, stages.kinds.get(home)) ?? roleInStage(words, stages.kinds.get(line.stage));
  if (role === null) reportUnknownRole(context, words, stages.kinds.get(line.stage), path);
  return role;
}

function readAlsoIn(context: ReadingContext, resolved: Resolved<PartFields>, stages: KnownStages): readonly string[] {
  return namesOf(context, resolved.fields['also in'], resolved.placeOf('also in')).flatMap(({ name, path, span }) => {
    if (stages.names.includes(name)) return [name];
    const advice = didYouMean(name, stages.names) ?? `Blocks here: ${stages.names.join(', ')}.`;
    context.findings.push(
      readingFinding('unknown-stage', atValue(path, span), `"${name}" is no block of this entry.`, { advice, subject: name }),
    );
    return [];
  });
}

function readMeasured(context: ReadingContext, resolved: Resolved<PartFields>, role: Role): Rating | null {
  const text = resolved.fields.measured;
  if (text === undefined) return null;
  const reading = readRatingOnce(splitEvidence(text).text, role.bareNumber);
  reportRemarks(context, reading.remarks, resolved.placeOf('measured'));
  return reading.ok ? reading.value : null;
}
