import type { PathBlock, PathOutlet, PowerPath } from '../derived/power-path/power-path.ts';
import { stageOf } from '../stages/index.ts';
import { isMissing, type Known } from '../values/value.ts';
import { mono, numberColumn, rowId, textColumn, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'power-path';
const TITLE = 'Power path';

export const powerPathTable: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ derived }: TableInput): Table | null {
  const { path } = derived;
  if (path === null) return null;
  return {
    id: ID,
    title: TITLE,
    caption: 'Power from the supply to the ports, stage by stage.',
    columns: [
      textColumn('stage', 'Stage'),
      textColumn('kind', 'What it is'),
      textColumn('side', 'Side'),
      numberColumn('in', 'In', 'W'),
      numberColumn('out', 'Out', 'W'),
      numberColumn('loss', 'Loss', 'W'),
      numberColumn('conduction', 'Of it conduction alone', 'W'),
      textColumn('parts', 'Parts'),
    ],
    groups: [
      { id: 'stages', title: null, glyph: null, rows: path.blocks.map(blockRow) },
      { id: 'ports', title: 'Ports', glyph: null, rows: path.outlets.map(outletRow) },
      { id: 'whole', title: 'Whole device', glyph: null, rows: [wholeRow(path)] },
    ],
    notes: [...path.notes, ...conductionNotes(path.blocks)],
  };
}

function blockRow(block: PathBlock): Row {
  return {
    id: rowId(block.stage),
    cells: [
      words(block.stage),
      words(stageOf(block.kind)?.name ?? block.kind),
      words(block.side === 'none' ? null : block.side === 'barrier' ? 'across the barrier' : block.side, 'no barrier'),
      power(block.input),
      power(block.output),
      power(block.loss),
      conduction(block),
      mono(block.parts.flatMap(({ references }) => references).join(', '), 'none named'),
    ],
  };
}

function outletRow({ ports, power: leaving, note }: PathOutlet): Row {
  const name = ports.length === 0 ? 'output' : ports.join(' + ');
  const none: Cell = { kind: 'none' };
  return { id: `port-${rowId(name)}`, cells: [mono(name), words(note, 'no offer known'), none, none, power(leaving), none, none, none] };
}

function wholeRow({ input, output, loss, source }: PowerPath): Row {
  const line = source.line === null ? source.name : `${source.name}, ${source.line}`;
  const none: Cell = { kind: 'none' };
  return { id: 'whole', cells: [words('all'), words(line), none, power(input), power(output), power(loss), none, none] };
}

function conduction({ conduction: worked }: PathBlock): Cell {
  if (worked === null) return { kind: 'none' };
  return isMissing(worked.loss) ? { kind: 'missing', reason: worked.loss.reason } : { kind: 'value', value: worked.loss, decimals: 2 };
}

/** What the column of conduction is, and whose could not be worked out. */
function conductionNotes(blocks: readonly PathBlock[]): readonly string[] {
  const worked = blocks.flatMap((block) => block.conduction ?? []);
  if (worked.length === 0) return [];
  const unknown = worked.flatMap((one) => one.unknown).map(({ references, reason }) => `${references.join(', ')}: ${reason}.`);
  return [
    'Conduction alone: current in the resistance, or through the forward drop, of the named switches, diodes and chokes at this load, worked out. It is a part of the loss, never the whole of it.',
    ...(unknown.length === 0 ? [] : [`Conduction not known of ${unknown.join(' Of ')}`]),
  ];
}

function power(known: Known<'power'>): Cell {
  return isMissing(known) ? { kind: 'missing', reason: known.reason } : { kind: 'value', value: known, decimals: 1 };
}
