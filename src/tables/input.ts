import { plainGroup, numberColumn, textColumn, valueCell } from './cells.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'input';
const TITLE = 'Supply side';

export const input: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry, derived }: TableInput): Table | null {
  const { highLine, peak, lowLine, inputCurrent } = derived.input;
  if ([highLine, peak, lowLine, inputCurrent].every(isMissing)) return null;
  const mains = entry.nameplate.input?.kind !== 'DC';
  const rows = [
    row('high-line', mains ? 'High line' : 'Highest supply voltage', highLine, 'V'),
    row('peak', mains ? 'Crest of the mains' : 'Peak supply voltage', peak, 'V'),
    row('low-line', mains ? 'Low line' : 'Lowest supply voltage', lowLine, 'V'),
    row('input-current', 'Input current at low line and full load', inputCurrent, 'A'),
  ];
  const printed = entry.nameplate.input?.written;
  return {
    id: ID,
    title: TITLE,
    caption: `What the supply puts on the input${printed === undefined ? '' : `; printed: ${printed}`}.`,
    columns: [textColumn('quantity', 'Quantity'), numberColumn('value', 'Value', null)],
    groups: [plainGroup(rows)],
    notes: [],
  };
}

function row(id: string, name: string, value: Known, unit: string): Row {
  return { id, cells: [{ kind: 'text', text: name }, valueCell(value, unit)] };
}
