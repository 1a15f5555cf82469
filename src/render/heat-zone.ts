import type { Table } from '../tables/table.ts';
import { heat } from '../tables/heat.ts';
import { heatLoss } from '../tables/heat-loss.ts';
import { sustainedPower } from '../tables/sustained-power.ts';
import { escapeText } from '../figures/markup.ts';
import type { SheetZone } from './sheet-zone.ts';
import { sentence } from './words.ts';

/** What is read together: how hot it gets, what heats it, and the power that is left once it is warm. */
const READ_TOGETHER: ReadonlySet<string> = new Set([heat.id, heatLoss.id, sustainedPower.id]);

/** Whether a table stands in the zone of heat, where there are several of its kind. */
export function isOfHeat({ id }: Table): boolean {
  return READ_TOGETHER.has(id);
}

/** Temperatures, loss and sustained power in one zone, each table under its own caption. */
export function heatZone(tables: readonly Table[], view: (table: Table) => string): SheetZone {
  const ids = new Set(tables.map(({ id }) => id));
  const said = [
    ids.has(heat.id) ? 'how hot it gets' : null,
    ids.has(heatLoss.id) ? 'what heats it' : null,
    ids.has(sustainedPower.id) ? 'how much power is left once it is warm' : null,
  ].filter((piece) => piece !== null);
  const words = said.length < 3 ? said.join(' and ') : `${said.slice(0, -1).join(', ')}, and ${said.at(-1) ?? ''}`;
  return {
    title: ids.has(sustainedPower.id) ? 'Heat and sustained power' : 'Heat',
    layout: 'side',
    side: `<p>${words.charAt(0).toUpperCase()}${words.slice(1)}.</p><p class="note ruled">A controller that is too warm cuts the power: a surface that stays cool may be one that was throttled.</p>`,
    matter: tables
      .map(
        (table) =>
          `<div class="heat-table"><p class="note"><b>${escapeText(table.title)}.</b> ${sentence(table.caption)}</p>${view(table)}</div>`,
      )
      .join(''),
  };
}
