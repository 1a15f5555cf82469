import type { OuterSize } from '../entry/entry.ts';
import { benchAddress } from './bench-address.ts';
import { factCell, numberColumn, plainGroup, textColumn, valueCell } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { isMissing } from '../values/value.ts';

const ID = 'size';
const TITLE = 'Size and density';

export const size: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry, derived }: TableInput): Table | null {
  const { volume, density, specificPower, basis } = derived.size;
  if (isMissing(volume) && entry.body.mass === null) return null;
  const rows: Row[] = [
    ...(entry.body.size === null ? [] : [{ id: 'size', cells: [named('Size'), sizeCell(entry.body.size)] }]),
    { id: 'volume', cells: [named('Volume'), valueCell(volume, 'cm³')] },
    { id: 'mass', cells: [named('Mass'), factCell(entry.body.mass, 'not weighed', 'g')] },
    { id: 'density', cells: [named('Power density'), valueCell(density, 'W/cm³')] },
    { id: 'density-inch', cells: [named('Power density, per cubic inch'), valueCell(density, 'W/in³')] },
    { id: 'specific-power', cells: [named('Specific power'), valueCell(specificPower, 'W/kg')] },
  ];
  return {
    id: ID,
    title: TITLE,
    caption: `Rated output power over outer volume and over mass; ${basis}.`,
    columns: [textColumn('quantity', 'Quantity'), numberColumn('value', 'Value', null)],
    groups: [plainGroup(rows)],
    notes: [],
  };
}

function sizeCell(size: OuterSize): Cell {
  const link = benchAddress(size);
  return { kind: 'text', text: size.size.written, mono: true, ...(link === null ? {} : { link }) };
}

function named(text: string): { readonly kind: 'text'; readonly text: string } {
  return { kind: 'text', text };
}
