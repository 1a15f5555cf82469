import type { CapacitorLife, HeatFigures, HotSpot } from '../derived/heat/heat-figures.ts';
import { TOUCH_TEMPERATURES } from '../standards/touch-temperature.ts';
import { isMissing, type Known } from '../values/value.ts';
import { numberColumn, rowId, textColumn, words } from './cells.ts';
import { mark } from './mains-side.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'heat';
const TITLE = 'Heat';

export const heat: TableDeclaration = { id: ID, title: TITLE, build };

function build({ derived }: TableInput): Table | null {
  const { heat: figures } = derived;
  if (isMissing(figures.loss) && figures.spots.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption:
      'The loss over the surface, the temperature that gives in free air, and what was measured. An indication, not a compliance verdict.',
    columns: [
      textColumn('what', 'What'),
      numberColumn('value', 'Value', null),
      numberColumn('ambient', 'Air', '°C'),
      numberColumn('limit', 'Limit', '°C'),
      textColumn('verdict', 'Verdict'),
      textColumn('known', 'Limit known from'),
    ],
    groups: [
      { id: 'computed', title: 'Computed', glyph: null, rows: computedRows(figures) },
      { id: 'measured', title: 'Measured', glyph: null, rows: figures.spots.map(spotRow) },
      { id: 'life', title: 'Life of capacitors', glyph: null, rows: figures.lives.map(lifeRow) },
    ].filter(({ rows }) => rows.length > 0),
    notes: notesOf(figures),
  };
}

function computedRows({ loss, at, surface, flux, temperature }: HeatFigures): readonly Row[] {
  return [
    plain('loss', `Loss${at === null ? '' : ` at ${at}`}`, value(loss, 'W', 1)),
    plain('surface', 'Outer surface', value(surface, 'cm²', 0)),
    plain('flux', 'Loss over surface', value(flux, 'W/m²', 0)),
    plain('temperature', 'Surface by convection and radiation', value(temperature, '°C', 0)),
  ];
}

function plain(id: string, what: string, cell: Cell): Row {
  const none: Cell = { kind: 'none' };
  return { id, cells: [words(what), cell, none, none, none, none] };
}

function spotRow(spot: HotSpot): Row {
  const { place, measured, ambient, isOutside, material, limit, limitIsRead, verdict } = spot;
  const asked = isOutside ? `${material}, touched up to ten seconds: ${limitIsRead ? 'as quoted elsewhere' : 'from memory'}` : null;
  return {
    id: `${rowId(place)}-${spot.index + 1}`,
    cells: [words(place), value(measured, '°C'), value(ambient, '°C'), value(limit, '°C'), mark(verdict), words(asked, 'inside')],
  };
}

function lifeRow({ references, life }: CapacitorLife): Row {
  return plain(`life-${rowId(references.join(' '))}`, `${references.join(', ')}, by the rule of 10 K`, value(life, 'h'));
}

function value(known: Known, unit: string, decimals?: number): Cell {
  if (isMissing(known)) return { kind: 'missing', reason: known.reason };
  return { kind: 'value', value: known, unit, ...(decimals === undefined ? {} : { decimals }) };
}

function notesOf({ temperature, spots }: HeatFigures): readonly string[] {
  return [
    ...(isMissing(temperature)
      ? []
      : [
          `${temperature.low.toFixed(0)} to ${temperature.high.toFixed(0)} °C: the correlations are good to ±20 % of the rise at this size. It is the mean of the whole surface in free air; in a socket or on a table it is hotter, and a hot spot is hotter than the mean.`,
        ]),
    ...(spots.some(({ isOutside }) => isOutside)
      ? [`${TOUCH_TEMPERATURES.source.title}: ${TOUCH_TEMPERATURES.source.section}. Compared as measured, at the room it was measured in.`]
      : []),
  ];
}
