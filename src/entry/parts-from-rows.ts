import type { Finding } from '../diagnostics/finding.ts';
import { didYouMean } from './nearest-word.ts';
import { readingFinding, type ReadingRuleId } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';
import { PART_SCHEMA } from './schema-parts.ts';

/** One row of a spreadsheet of parts: cells by column head, and its line in the file. */
export interface PartRow {
  readonly cells: Readonly<Record<string, string>>;
  readonly line: number;
}

type PartsSource = Exclude<NonNullable<EntrySource['parts']>, string>;

/** Parts in the shape that an entry has them in, the faults of the sheet, and the line of each part. */
export interface PartsOfSheet {
  readonly parts: PartsSource;
  /** Places are lines of the spreadsheet. */
  readonly findings: readonly Finding[];
  /** Line of the spreadsheet by stage and key: `lines.get(lineKey(stage, key))`. */
  readonly lines: ReadonlyMap<string, number>;
}

const REFERENCE_HEADS: readonly string[] = ['reference', 'references', 'ref'];
const FIELD_HEADS: readonly string[] = Object.keys(PART_SCHEMA.shape);
const HEADS: readonly string[] = ['stage', ...REFERENCE_HEADS, ...FIELD_HEADS];
const FITTINGS: readonly string[] = ['absent', 'unknown'];

/** Key under which the line of a part stands. */
export function lineKey(stage: string, key: string): string {
  return JSON.stringify([stage, key]);
}

/**
 * Brings the rows of a spreadsheet into the shape that parts have in an entry. Heads are the words of the format (stage, reference, role,
 * rating, maker …), in any case; an unknown head, a row without stage or reference and a reference that stands twice are reported.
 */
export function partsFromRows(rows: readonly PartRow[]): PartsOfSheet {
  const findings: Finding[] = [...headFindings(rows)];
  const groups = new Map<string, Map<string, PartsSource[string][string]>>();
  const lines = new Map<string, number>();
  for (const row of rows) {
    const part = partOfRow(row);
    if (part === 'blank') continue;
    if ('rule' in part) {
      findings.push(part);
      continue;
    }
    const group = groups.get(part.stage) ?? new Map<string, PartsSource[string][string]>();
    groups.set(part.stage, group);
    if (group.has(part.key))
      findings.push(at(row.line, 'duplicate-reference', `${part.key} stands twice under ${part.stage}.`, undefined, part.key));
    else {
      group.set(part.key, part.value);
      lines.set(lineKey(part.stage, part.key), row.line);
    }
  }
  return { parts: Object.fromEntries([...groups].map(([stage, group]) => [stage, Object.fromEntries(group)])), findings, lines };
}

function headFindings(rows: readonly PartRow[]): readonly Finding[] {
  const heads = Object.keys(rows[0]?.cells ?? {});
  return heads.flatMap((head) => {
    if (head.trim() === '' || HEADS.includes(folded(head))) return [];
    return [
      at(1, 'unknown-key', `"${head}" is no column of a list of parts.`, didYouMean(folded(head), HEADS) ?? `Known: ${HEADS.join(', ')}.`),
    ];
  });
}

interface SheetPart {
  readonly stage: string;
  readonly key: string;
  readonly value: PartsSource[string][string];
}

function partOfRow(row: PartRow): SheetPart | Finding | 'blank' {
  const cells = new Map(
    Object.entries(row.cells).flatMap(([head, cell]): [string, string][] => (cell.trim() === '' ? [] : [[folded(head), cell.trim()]])),
  );
  if (cells.size === 0) return 'blank';
  const stage = cells.get('stage');
  if (stage === undefined)
    return at(row.line, 'missing-field', 'This row has no stage.', 'Name the block that the part belongs to, or case.');
  const reference = REFERENCE_HEADS.map((head) => cells.get(head)).find((cell) => cell !== undefined);
  const [role, rating] = [cells.get('role'), cells.get('rating')];
  if (reference === undefined && role !== undefined && rating !== undefined && FITTINGS.includes(rating))
    return { stage, key: role, value: rating };
  if (reference === undefined)
    return at(row.line, 'missing-field', 'This row has no reference.', 'Give any label that is unique in the entry.');
  return fieldsOf(row, cells, stage, reference);
}

function fieldsOf(row: PartRow, cells: ReadonlyMap<string, string>, stage: string, key: string): SheetPart | Finding {
  const fields: Record<string, string | number> = {};
  for (const head of FIELD_HEADS) {
    const cell = cells.get(head);
    if (cell !== undefined) fields[head] = head === 'count' ? Number(cell) : cell;
  }
  const parsed = PART_SCHEMA.safeParse(fields);
  if (parsed.success) return { stage, key, value: parsed.data };
  const head = String(parsed.error.issues[0]?.path[0] ?? 'row');
  return at(row.line, 'wrong-shape', `${key}: "${cells.get(head) ?? ''}" does not fit under ${head}.`, undefined, key);
}

function at(line: number, rule: ReadingRuleId, message: string, advice?: string, subject?: string): Finding {
  return readingFinding(rule, { in: 'file', line, column: 1 }, message, {
    ...(advice === undefined ? {} : { advice }),
    ...(subject === undefined ? {} : { subject }),
  });
}

function folded(head: string): string {
  return head
    .replaceAll('\uFEFF', '')
    .replace(/[\s_]+/gu, ' ')
    .trim()
    .toLowerCase();
}
