import { FIRST_COLUMNS, NO_QUERY } from '../corpus/finder-query.ts';
import type { FinderRegister, FinderRow } from '../corpus/finder-row.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import { finderForm } from './finder-form.ts';
import { scatterOf } from './finder-scatter-of.ts';
import { finderTable } from './finder-table.ts';
import { pageTurner } from './page-turner.ts';
import { scrollRegion } from './scroll-region.ts';
import { ZONE_END, zoneStart } from './zone.ts';

const WITHOUT_SCRIPT =
  '<noscript><p class="side">Ranges and choices need a script. The table holds every device, densest first; <a href="/topologies/">topologies</a> and <a href="/parts/">parts</a> lead to them too.</p></noscript>';

/** One page of the finder: the form and the scatter on the first, the table on each. Its script finds its places by their data attributes. */
export function finderZones(finder: FinderRegister, list: ListPage<FinderRow>): string {
  const isFirst = list.page === 1;
  const count = finder.rows.length;
  const rows = isFirst && count > 0 ? ' data-rows="/finder/rows.json"' : '';
  return (
    `${zoneStart({ letter: 'A', title: null, label: 'Finder' })}<div class="zg finder" id="finder"${rows} data-compare="/compare/">` +
    `<div class="c12 finder-left"><h1 class="small-title">Finder</h1>${WITHOUT_SCRIPT}${isFirst ? finderForm(finder) : ''}` +
    '<p class="note under"><a href="/search/">Search in all text</a></p></div>' +
    `<div class="c38"><div class="found-line" id="zones"><p><span class="count" data-count>${String(count)} ${count === 1 ? 'device' : 'devices'}</span> ` +
    '<span class="soft" data-sentence>highest density first</span></p><button type="button" class="as-link" data-clear hidden>Clear all</button></div>' +
    '<p class="vh" role="status" data-status></p><p class="note" data-refused hidden></p>' +
    `${count === 0 ? '<p>No teardown is published yet.</p>' : found(finder, list)}</div></div>${ZONE_END}`
  );
}

function found({ rows, currency }: FinderRegister, list: ListPage<FinderRow>): string {
  const densest = Math.max(0.001, ...rows.map((row) => row.density ?? 0));
  const table = finderTable(list.rows, { sort: NO_QUERY.sort, columns: FIRST_COLUMNS, currency, densest, chosen: null });
  const scatter =
    list.page === 1
      ? `<div class="scatter-box" data-scatter>${scatterOf(rows, new Set(rows), {}, 846)}</div><p class="note" data-scatter-note>Filled marks are found, open ones are outside the ranges. ` +
        'Dash-dot lines join equal W/cm³. The dashed field is the range that is set. Marks by kind: circle wall, square desktop, triangle car, diamond power bank.</p>'
      : '';
  return `${scatter}<div data-table>${scrollRegion('Devices found', table)}</div><p class="note under" data-more></p>${pageTurner(list, '/finder/')}`;
}
