import type { Part } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { mono, numberColumn, plainGroup, rowId, textColumn } from './cells.ts';
import type { Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'parts-by-role';
const TITLE = 'Parts by role';

export const partsByRole: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry }: TableInput): Table | null {
  const fitted = entry.parts.filter((part) => part.fitting === 'fitted');
  if (fitted.length === 0) return null;
  const roles = [...new Set(fitted.map((part) => part.role))];
  const rows = roles.map((role) =>
    rowOf(
      role,
      fitted.filter((part) => part.role === role),
    ),
  );
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(
      fitted.reduce((sum, part) => sum + piecesOf(part), 0),
      'piece',
    )} in ${counted(roles.length, 'role')}.`,
    columns: [textColumn('role', 'Role'), numberColumn('pieces', 'Pieces', null), textColumn('references', 'References')],
    groups: [plainGroup(rows)],
    notes: [],
  };
}

function rowOf(role: string, held: readonly Part[]): Row {
  const pieces = held.reduce((sum, part) => sum + piecesOf(part), 0);
  const references = held.flatMap((part) => part.references).join(', ');
  return { id: rowId(role), cells: [{ kind: 'text', text: roleOf(role)?.name ?? role }, mono(String(pieces)), mono(references)] };
}

function piecesOf(part: Part): number {
  return part.references.length * part.count;
}
