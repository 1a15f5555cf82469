import { factCell, numberColumn, plainGroup, rowId, textColumn, valueCell } from './cells.ts';
import type { Cell, Table } from './table.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'port-falls';
const TITLE = 'How far each port can fall';

export const portFalls: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry, derived }: TableInput): Table | null {
  const matrix = derived.shares;
  if (matrix === null || matrix.ports.length < 2) return null;
  const seen = matrix.counts.known + matrix.counts.implied;
  const rows = matrix.falls.map(({ port, highest, lowest }) => {
    const limit = entry.ports.find((candidate) => candidate.id === port)?.power ?? null;
    return {
      id: rowId(port),
      cells: [{ kind: 'text', text: port, mono: true } as const, factCell(limit), cellOf(highest), cellOf(lowest)],
    };
  });
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(matrix.ports.length, 'port')}: highest and lowest power of each in the ${seen} sets known so far.`,
    columns: [
      textColumn('port', 'Port'),
      numberColumn('limit', 'Own limit', 'W'),
      numberColumn('highest', 'Highest', 'W'),
      numberColumn('lowest', 'Lowest', 'W'),
    ],
    groups: [plainGroup(rows)],
    notes: matrix.counts.missing > 0 ? [`${counted(matrix.counts.missing, 'set')} not known: a port may fall further in those.`] : [],
  };
}

function cellOf(power: ShareMatrix['falls'][number]['highest']): Cell {
  return power === null ? { kind: 'missing', reason: 'no set known' } : valueCell(power);
}
