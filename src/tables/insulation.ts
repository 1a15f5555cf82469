import { counted, factCell, numberColumn, plainGroup, rowId, textColumn, words } from './cells.ts';
import type { Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'insulation';
const TITLE = 'Insulation';

export const insulation: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry }: TableInput): Table | null {
  if (entry.insulation.length === 0) return null;
  const rows = entry.insulation.map((place) => ({
    id: rowId(place.id),
    cells: [
      words(place.id),
      words(place.between),
      words(place.kind, 'kind not given'),
      factCell(place.clearance, 'not measured'),
      factCell(place.creepage, 'not measured'),
      factCell(place.slot, 'none given'),
      words(place.sheet === null ? null : place.sheet ? 'yes' : 'no', 'not looked at'),
    ],
  }));
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(rows.length, 'place')} measured. An indication, never a compliance verdict.`,
    columns: [
      textColumn('place', 'Place'),
      textColumn('between', 'Between'),
      textColumn('kind', 'Kind'),
      numberColumn('clearance', 'Clearance', 'mm'),
      numberColumn('creepage', 'Creepage', 'mm'),
      numberColumn('slot', 'Slot', 'mm'),
      textColumn('sheet', 'Sheet'),
    ],
    groups: [plainGroup(rows)],
    notes: [],
  };
}
