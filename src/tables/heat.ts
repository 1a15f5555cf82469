import type { ContactLimit, HeatFigures, HotSpot } from '../derived/heat/heat-figures.ts';
import { TOUCH_TEMPERATURES } from '../standards/touch-temperature.ts';
import { isMissing, type Known } from '../values/value.ts';
import { detailColumn, numberColumn, rowId, textColumn, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import { mark } from './mains-side.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'heat';
const TITLE = 'Heat';

export const heat: TableDeclaration = { id: ID, title: TITLE, build };

function build({ derived }: TableInput): Table | null {
  const { heat: figures } = derived;
  if (figures.spots.length === 0) return null;
  const inside = figures.spots.filter((spot) => !spot.isOutside);
  const outside = figures.spots.filter((spot) => spot.isOutside);
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption: captionOf(figures),
    columns: [
      textColumn('place', 'Place'),
      numberColumn('measured', 'Measured', '°C'),
      detailColumn(numberColumn('ambient', 'Air', '°C')),
      numberColumn('rise', 'Rise', 'K'),
      numberColumn('limit', 'Limit', '°C'),
      textColumn('verdict', 'Verdict'),
      detailColumn(textColumn('conditions', 'At')),
      detailColumn(textColumn('known', 'Limit for')),
    ],
    groups: [
      { id: 'outside', title: inside.length === 0 ? null : 'On the case', glyph: null, rows: outside.map(spotRow) },
      { id: 'inside', title: outside.length === 0 ? null : 'Inside', glyph: null, rows: inside.map(spotRow) },
      { id: 'contact', title: 'Other times of touching, for information', glyph: null, rows: otherContacts(figures) },
    ].filter(({ rows }) => rows.length > 0),
    notes: notesOf(figures),
  });
}

/** The hottest place and its rise, the number first; without an air temperature it says that there is no rise, and why. */
function captionOf({ spots }: HeatFigures): string {
  const hottest = spots.reduce<HotSpot | null>((most, spot) => (isHotter(spot, most) ? spot : most), null);
  const fixed = 'An indication, not a compliance verdict.';
  if (hottest === null || isMissing(hottest.measured)) return `Measured temperatures. ${fixed}`;
  const rise = isMissing(hottest.rise)
    ? 'no rise, because the air temperature is not given'
    : `${hottest.rise.nominal.toFixed(0)} K over the air`;
  return `${hottest.measured.nominal.toFixed(0)} °C at the hottest place, ${hottest.place}: ${rise}. ${fixed}`;
}

function isHotter(spot: HotSpot, most: HotSpot | null): boolean {
  if (isMissing(spot.measured) || spot.isReported) return false;
  return most === null || isMissing(most.measured) || spot.measured.nominal > most.measured.nominal;
}

function spotRow(spot: HotSpot): Row {
  const { place, index, measured, ambient, rise, limit, verdict, conditions } = spot;
  const judged: Cell = spot.isReported
    ? { kind: 'text', text: 'reported, not judged' }
    : verdict === 'not asked'
      ? { kind: 'none' }
      : mark(verdict);
  return {
    id: `${rowId(place)}-${index + 1}`,
    cells: [
      words(place),
      value(measured, '°C'),
      value(ambient, '°C'),
      isMissing(rise) ? { kind: 'missing', reason: rise.reason } : value(rise, 'K', 0),
      spot.limitOf.of === 'nothing' ? { kind: 'none' } : value(limit, '°C'),
      judged,
      conditions === null ? { kind: 'missing', reason: 'load and time not given' } : words(conditions),
      limitWords(spot),
    ],
  };
}

function limitWords({ limitOf, material }: HotSpot): Cell {
  if (limitOf.of === 'nothing') return { kind: 'none' };
  if (limitOf.of === 'part') return words(`what ${limitOf.references.join(', ')} is rated for`);
  return words(`${material} touched ${limitOf.contact}, ${standing(limitOf.isRead)}`);
}

function standing(isRead: boolean): string {
  return isRead ? 'as quoted elsewhere' : 'from memory';
}

/** The limits of the contact times that this device is not judged by, as distances in kelvin and never as a verdict. */
function otherContacts({ contacts }: HeatFigures): readonly Row[] {
  return contacts.filter(({ isAsked }) => !isAsked).map(contactRow);
}

function contactRow({ material, contact, limit, isRead, hottest }: ContactLimit): Row {
  const none: Cell = { kind: 'none' };
  return {
    id: rowId(`${material} ${contact}`),
    cells: [
      words(`${material}, ${contact}`),
      none,
      none,
      none,
      value(limit, '°C'),
      words(distance(hottest, limit)),
      none,
      words(standing(isRead)),
    ],
  };
}

/** "hottest place 12 K below". */
function distance(hottest: Known<'temperature'>, limit: Known<'temperature'>): string | null {
  if (isMissing(hottest) || isMissing(limit)) return null;
  const above = hottest.nominal - limit.nominal;
  return above > 0 ? `hottest place ${above.toFixed(0)} K above` : `hottest place ${Math.abs(above).toFixed(0)} K below`;
}

function value(known: Known, unit: string, decimals?: number): Cell {
  if (isMissing(known)) return { kind: 'missing', reason: known.reason };
  return { kind: 'value', value: known, unit, ...(decimals === undefined ? {} : { decimals }) };
}

function notesOf({ spots }: HeatFigures): readonly string[] {
  const doubtful = spots.filter(({ emissivity }) => emissivity !== null).map(({ place }) => place);
  return [
    ...(doubtful.length === 0
      ? []
      : [
          `${doubtful.join(', ')}: bare metal radiates a few per cent of what plastic does, so a camera reads it far too cold; true only under tape or paint, or by a thermocouple.`,
        ]),
    ...(spots.some(({ isOutside }) => isOutside)
      ? [
          `${TOUCH_TEMPERATURES.source.title}: ${TOUCH_TEMPERATURES.source.section}. Compared as measured, at the room it was measured in; the limit is not moved by the air temperature.`,
        ]
      : []),
    ...(spots.some(({ limitOf }) => limitOf.of === 'part')
      ? ['A rating is compared with the surface of the part; its inside is hotter.']
      : []),
  ];
}
