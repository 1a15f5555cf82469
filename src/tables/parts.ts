import type { StressRow } from '../derived/derived.ts';
import type { Entry, Part } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { isMissing } from '../values/value.ts';
import { mono, numberColumn, rowId, textColumn, words } from './cells.ts';
import { verdictText } from './stress.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'parts';
const TITLE = 'Parts by stage';

export const parts: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry, derived }: TableInput): Table | null {
  if (entry.parts.length === 0) return null;
  const pieces = entry.parts.filter((part) => part.fitting === 'fitted').reduce((sum, part) => sum + part.references.length, 0);
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(pieces, 'part')} identified, in the order power flows.`,
    columns: [
      textColumn('reference', 'Reference'),
      textColumn('role', 'Role'),
      textColumn('maker', 'Maker'),
      textColumn('number', 'Part number'),
      textColumn('package', 'Package'),
      textColumn('rating', 'Rating'),
      textColumn('evidence', 'Evidence'),
      numberColumn('ratio', 'Ratio', '1'),
      textColumn('verdict', 'Verdict'),
    ],
    groups: stagesOf(entry).map((stage) => groupOf(stage, entry, derived.stress)),
    notes: [],
  };
}

/** Stages that hold parts, in the order of the entry; parts of no stage come last. */
function stagesOf(entry: Entry): string[] {
  const held = new Set(entry.parts.map((part) => part.stage));
  const known = entry.stages.map((stage) => stage.id).filter((id) => held.has(id));
  return [...known, ...[...held].filter((id) => !known.includes(id))];
}

function groupOf(id: string, entry: Entry, rows: readonly StressRow[]): RowGroup {
  const stage = entry.stages.find((candidate) => candidate.id === id);
  const held = entry.parts.filter((part) => part.stage === id);
  return { id: rowId(id), title: id, glyph: stage?.kind ?? null, rows: held.map((part) => rowOf(part, worstOf(part, rows))) };
}

function rowOf(part: Part, worst: StressRow | null): Row {
  const rating = part.rating === null ? null : part.rating.written;
  const unrated = part.fitting === 'fitted' ? 'not marked' : part.fitting;
  return {
    id: rowId(part.references.join(' ')),
    cells: [
      mono(part.references.join(', ')),
      words(roleOf(part.role)?.name ?? part.role),
      words(part.maker),
      mono(part.number, part.marking === null ? 'not marked' : `marked ${part.marking}`),
      words(part.package),
      mono(rating, unrated),
      words(part.rating === null ? null : part.evidence, '–'),
      ratioCell(worst),
      worst === null ? { kind: 'none' } : { kind: 'mark', mark: worst.verdict, text: verdictText(worst) },
    ],
  };
}

function ratioCell(worst: StressRow | null): Cell {
  if (worst === null) return { kind: 'none' };
  return isMissing(worst.ratio) ? { kind: 'missing', reason: worst.ratio.reason } : { kind: 'value', value: worst.ratio, decimals: 2 };
}

/** The gravest stress of a part: over before straddles before within before withheld, then the highest ratio. */
function worstOf(part: Part, rows: readonly StressRow[]): StressRow | null {
  const gravity = ['withheld', 'within', 'straddles', 'over'];
  const own = rows.filter((row) => row.stage === part.stage && row.references.join() === part.references.join());
  const rank = (row: StressRow): number =>
    gravity.indexOf(row.verdict) * 1000 + (isMissing(row.ratio) ? 0 : Math.min(row.ratio.nominal, 999));
  return own.reduce<StressRow | null>((worst, row) => (worst === null || rank(row) > rank(worst) ? row : worst), null);
}
