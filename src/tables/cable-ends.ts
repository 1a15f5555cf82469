import { cableRows, type CableRow } from '../derived/voltage-quality/cable-rows.ts';
import { isMissing } from '../values/value.ts';
import { counted, detailColumn, numberColumn, plainGroup, rowId, textColumn, valueCell, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'cable-ends';
const TITLE = 'Port against cable end';

export const cableEnds: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

function build({ entry }: TableInput): Table | null {
  const rows = cableRows(entry);
  if (rows.length === 0) return null;
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption: `${counted(rows.length, 'load')} measured at the port and at the end of the cable, with what is lost on the way.`,
    columns: [
      textColumn('what', 'What'),
      numberColumn('near', 'At the port', 'V'),
      numberColumn('far', 'At the cable end', 'V'),
      numberColumn('lost', 'Lost', 'mV'),
      detailColumn(numberColumn('resistance', 'Resistance implied', 'mΩ')),
      detailColumn(numberColumn('own', 'Wire by length and gauge', 'mΩ')),
      detailColumn(textColumn('cable', 'Cable')),
    ],
    groups: [plainGroup(rows.map(rowOf))],
    notes: [
      'The resistance implied is that of wire and contacts there and back; the wire is copper at 20 °C. What lies between the two is contacts, a warm wire, or a cable thinner than it says.',
      'A reading without an instrument counts as good to half of its last digit.',
    ],
  });
}

function rowOf({ port, set, current, near, far, drop, resistance, cable, own }: CableRow, index: number): Row {
  const at = [isMissing(set) ? null : `${String(set.nominal)} V`, isMissing(current) ? null : `${String(current.nominal)} A`];
  const name = `${port === null ? '' : `${port} at `}${at.filter((each) => each !== null).join(', ')}`;
  const missingOwn: Cell = { kind: 'missing', reason: 'cable not named' };
  return {
    id: `${rowId(name)}-${index + 1}`,
    cells: [
      words(name),
      valueCell(near),
      valueCell(far),
      valueCell(drop, 'mV'),
      valueCell(resistance, 'mΩ'),
      own === null ? missingOwn : valueCell(own.resistance, 'mΩ'),
      words(cable?.written ?? null, 'cable not named'),
    ],
  };
}
