import { escapeText } from '../figures/markup.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import type { Entry } from '../entry/entry.ts';
import { photoLengths } from '../derived/photo-lengths/photo-lengths.ts';
import { TABLES } from '../tables/index.ts';
import { insulation } from '../tables/insulation.ts';
import { FOR_INFORMATION, mainsSide, NOT_ASKED } from '../tables/mains-side.ts';
import type { Row, Table } from '../tables/table.ts';
import { fold } from './fold.ts';
import { heatZone, isOfHeat } from './heat-zone.ts';
import { measurementsView } from './measurements.ts';
import { photoIndications } from './photo-lengths-view.ts';
import { tableView } from './table-view.ts';
import type { SheetZone } from './sheet-zone.ts';
import { listed, sentence } from './words.ts';
import { counted } from '../units/counted.ts';

/** Short tables of figures that stand together in one zone. */
const SIZE_AND_SUPPLY: ReadonlySet<string> = new Set(['size', 'input', 'stored-energy']);

/** Tables that a figure zone of its own shows, unless the author has placed them in the text. */
const OWN_ZONES: ReadonlySet<string> = new Set(TABLES.filter((table) => table.hasFigure === true).map((table) => table.id));

/** Zones of the derived tables that no figure shows and the author has not placed, and of the measurements. */
export function tableZones(sheet: PreparedSheet): readonly (SheetZone | null)[] {
  const free = sheet.tables.filter((table) => !OWN_ZONES.has(table.id) && !sheet.placed.includes(table.id));
  const ofHeat = free.filter(isOfHeat);
  const alone = free.filter((table) => !SIZE_AND_SUPPLY.has(table.id));
  return [
    sizeAndSupplyZone(free.filter((table) => SIZE_AND_SUPPLY.has(table.id))),
    ...alone.flatMap((table) => {
      if (ofHeat.length < 2 || !isOfHeat(table)) return [tableZone(table, sheet)];
      return table === ofHeat[0] ? [heatZone(ofHeat, withNotesFolded)] : [];
    }),
    measurementsZone(sheet.entry),
  ];
}

/** Size, input and stored energy side by side: short tables with their own captions. */
function sizeAndSupplyZone(tables: readonly Table[]): SheetZone | null {
  if (tables.length === 0) return null;
  const figures = tables.reduce((sum, table) => sum + table.groups.reduce((rows, group) => rows + group.rows.length, 0), 0);
  const names = listed(tables.map(({ title }, index) => (index === 0 ? title : title.charAt(0).toLowerCase() + title.slice(1))));
  const inside = `<div class="side-by-side">${tables.map((table) => `<div>${tableView(table, { caption: 'shown' })}</div>`).join('')}</div>`;
  const matter = fold(
    `<b>${counted(figures, 'figure')}</b> in ${counted(tables.length, 'table')}: ${escapeText(names.charAt(0).toLowerCase() + names.slice(1))}`,
    inside,
  );
  return {
    title: 'Size and supply',
    layout: 'side',
    side: '<p>What the box takes up, draws and stores.</p>',
    matter,
  };
}

function measurementsZone(entry: Entry): SheetZone | null {
  const matter = measurementsView(entry);
  return matter === ''
    ? null
    : { title: 'Measurements', layout: 'side', side: '<p>As read on the bench, each with its conditions.</p>', matter };
}

function tableZone(table: Table, { entry, photos }: PreparedSheet): SheetZone {
  const beside = table.id === insulation.id ? photoIndications(photoLengths(entry, photos)) : '';
  const matter = (table.id === mainsSide.id ? mainsMatter(table) : withNotesFolded(table)) + beside;
  return { title: table.title, layout: 'side', side: `<p>${sentence(table.caption)}</p>`, matter };
}

/** One note stands under its table; several stand behind a line. */
function withNotesFolded(table: Table): string {
  const { notes } = table;
  if (notes.length < 2) return tableView(table);
  const folded = `<div class="note">${notes.map((note) => `<p>${sentence(note)}</p>`).join('')}</div>`;
  return tableView({ ...table, notes: [] }) + fold(`<b>${counted(notes.length, 'note')}</b> on what the figures rest on`, folded);
}

/** Rules that something is to be said about stand open; those that are kept or ask nothing here stand behind a line. */
function mainsMatter(table: Table): string {
  const part = (isSettled: boolean): Table => ({
    ...table,
    groups: table.groups
      .map((group) => ({ ...group, rows: group.rows.filter((row) => settled(row) === isSettled) }))
      .filter(({ rows }) => rows.length > 0),
  });
  const rest = part(true);
  const count = rest.groups.reduce((sum, group) => sum + group.rows.length, 0);
  if (count === 0) return tableView(table);
  const folded = tableView({ ...rest, title: `${table.title}, rules kept` });
  return (
    tableView({ ...part(false), notes: [] }) +
    fold(`<b>${counted(count, 'rule')}</b> kept or asking nothing here, and what the figures rest on`, folded)
  );
}

function settled(row: Row): boolean {
  return row.cells.some(
    (cell) =>
      (cell.kind === 'mark' && cell.mark === 'within') ||
      (cell.kind === 'text' && (cell.text === NOT_ASKED || cell.text.startsWith(FOR_INFORMATION))),
  );
}
