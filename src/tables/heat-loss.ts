import type { CapacitorLife, HeatFigures } from '../derived/heat/heat-figures.ts';
import { isMissing, type Known } from '../values/value.ts';
import { numberColumn, plainGroup, rowId, textColumn, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'heat-loss';
const TITLE = 'Loss and surface';

export const heatLoss: TableDeclaration = { id: ID, title: TITLE, build };

function build({ derived }: TableInput): Table | null {
  const { heat } = derived;
  if (isMissing(heat.loss) && heat.lives.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: 'The loss over the outer surface, and the temperature that it gives in free air.',
    columns: [textColumn('what', 'What'), numberColumn('value', 'Computed', null)],
    groups: [plainGroup([...(isMissing(heat.loss) ? [] : lossRows(heat)), ...heat.lives.map(lifeRow)])],
    notes: notesOf(heat),
  };
}

function lossRows({ loss, at, surface, flux, temperature }: HeatFigures): readonly Row[] {
  return [
    row('loss', `Loss${at === null ? '' : ` at ${at}`}`, value(loss, 'W', 1)),
    row('surface', 'Outer surface', value(surface, 'cm²', 0)),
    row('flux', 'Loss over surface', value(flux, 'W/m²', 0)),
    row('temperature', 'Surface by convection and radiation', value(temperature, '°C', 0)),
  ];
}

function lifeRow({ references, life }: CapacitorLife): Row {
  return row(`life-${rowId(references.join(' '))}`, `Life of ${references.join(', ')} by the rule of 10 K`, value(life, 'h'));
}

function row(id: string, what: string, cell: Cell): Row {
  return { id, cells: [words(what), cell] };
}

function value(known: Known, unit: string, decimals?: number): Cell {
  if (isMissing(known)) return { kind: 'missing', reason: known.reason };
  return { kind: 'value', value: known, unit, ...(decimals === undefined ? {} : { decimals }) };
}

function notesOf({ temperature }: HeatFigures): readonly string[] {
  if (isMissing(temperature)) return [];
  return [
    `${temperature.low.toFixed(0)} to ${temperature.high.toFixed(0)} °C: the correlations are good to ±20 % of the rise at this size. It is the mean of the whole surface in free air; in a socket or on a table it is hotter, and a hot spot is hotter than the mean.`,
  ];
}
