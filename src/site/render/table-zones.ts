import { escapeText } from '../../figures/markup.ts';
import type { PreparedSheet } from '../../pipeline/prepared.ts';
import type { Entry } from '../../entry/entry.ts';
import { TABLES } from '../../tables/index.ts';
import type { Table } from '../../tables/table.ts';
import { measurementsView } from './measurements.ts';
import { tableView } from './table-view.ts';
import type { SheetZone } from './sheet-zone.ts';

/** Short tables of figures that stand together in one zone. */
const SIZE_AND_SUPPLY: ReadonlySet<string> = new Set(['size', 'input', 'stored-energy']);

/** Tables that a figure zone of its own shows, unless the author has placed them in the text. */
const OWN_ZONES: ReadonlySet<string> = new Set(TABLES.filter((table) => table.hasFigure === true).map((table) => table.id));

/** Zones of the derived tables that no figure shows and the author has not placed, and of the measurements. */
export function tableZones(sheet: PreparedSheet): readonly (SheetZone | null)[] {
  const free = sheet.tables.filter((table) => !OWN_ZONES.has(table.id) && !sheet.placed.includes(table.id));
  return [
    sizeAndSupplyZone(free.filter((table) => SIZE_AND_SUPPLY.has(table.id))),
    ...free.filter((table) => !SIZE_AND_SUPPLY.has(table.id)).map(tableZone),
    measurementsZone(sheet.entry),
  ];
}

/** Size, input and stored energy side by side: short tables with their own captions. */
function sizeAndSupplyZone(tables: readonly Table[]): SheetZone | null {
  if (tables.length === 0) return null;
  const matter = `<div class="side-by-side">${tables.map((table) => `<div>${tableView(table, { caption: 'shown' })}</div>`).join('')}</div>`;
  return {
    title: 'Size and supply',
    layout: 'side',
    side: '<p>What the box takes up, what it draws, and what it stores. The working is under <em>How it was computed</em>.</p>',
    matter,
  };
}

function measurementsZone(entry: Entry): SheetZone | null {
  const matter = measurementsView(entry);
  return matter === ''
    ? null
    : { title: 'Measurements', layout: 'side', side: '<p>As read on the bench, each with its conditions.</p>', matter };
}

function tableZone(table: Table): SheetZone {
  return { title: table.title, layout: 'side', side: `<p>${escapeText(table.caption)}</p>`, matter: tableView(table) };
}
