import type { PreparedSheet } from '../corpus/prepared.ts';
import { escapeText } from '../figures/markup.ts';
import { cableEnds } from '../tables/cable-ends.ts';
import { regulation } from '../tables/regulation.ts';
import type { Table } from '../tables/table.ts';
import { voltageQuality } from '../tables/voltage-quality.ts';
import { fold } from './fold.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableView } from './table-view.ts';
import { counted, sentence } from './words.ts';

/** Voltages against their band, how they hold over load and line, and what a cable takes; null where no output voltage was measured. */
export function voltageZone({ entry, derived, placed }: PreparedSheet): SheetZone | null {
  const drawn = [voltageQuality, regulation, cableEnds].flatMap((declaration): readonly Table[] => {
    const table = placed.includes(declaration.id) ? null : declaration.build({ entry, derived });
    return table === null ? [] : [table];
  });
  const [first] = drawn;
  if (first === undefined) return null;
  const tables = drawn.map((table, index) => {
    const caption = index === 0 ? 'hidden' : 'shown';
    return `<div class="voltage-table">${tableView({ ...table, notes: [] }, { caption })}</div>`;
  });
  const notes = [...new Set(drawn.flatMap((table) => table.notes))];
  const folded = `<div class="note">${notes.map((note) => `<p>${sentence(note)}</p>`).join('')}</div>`;
  const matter =
    tables.join('') + (notes.length === 0 ? '' : fold(`<b>${counted(notes.length, 'note')}</b> on what the figures rest on`, folded));
  return { title: first.title, layout: 'side', side: `<p>${escapeText(first.caption)}</p>`, matter };
}
