import type { FinderRegister } from '../corpus/finder-row.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import { escapeText } from '../figures/markup.ts';
import type { ComparedSheet } from './compared-sheet.ts';
import { comparisonMarkup } from './comparison.ts';
import { pageTurner } from './page-turner.ts';
import { sideZone, ZONE_END, zoneList, zoneStart, type ZoneFrame } from './zone.ts';

/** A sheet and the one most like it. */
export interface PairOfSheets {
  readonly address: string;
  readonly family: string;
  readonly sheets: readonly [ComparedSheet, ComparedSheet];
}

const CHOICE: ZoneFrame = { letter: 'A', title: null, label: 'Comparison' };
const PAIRS: ZoneFrame = { letter: 'B', title: 'Closest pairs', label: 'Closest pairs' };

/** Where "better" stands in a comparison, and that nothing is summed up. */
const betterWords = (taken: string): string =>
  `“Better” stands only where more or less is better whatever the need, ${taken} were taken on one basis, and the intervals do not overlap. No score and no winner: the order of needs is the reader’s.`;

/** The free choice, filled by its script, and the pairs that have pages of their own. */
export function comparisonZones(list: ListPage<PairOfSheets>, families: Readonly<Record<string, string>>): string {
  return (
    `${zoneStart(CHOICE)}<div id="compare" data-rows="/finder/rows.json" data-sheets="/compare/sheets/"><div class="compare-head"><h1 data-title>Compare</h1>` +
    '<p class="soft" data-lead>Up to four sheets side by side, fronts at one scale. The address of the page holds the choice.</p></div>' +
    '<noscript><p class="lead under">A free choice needs a script. The pairs below have pages of their own, which do not.</p></noscript>' +
    '<div class="picker" data-picker role="group" aria-label="Devices and rows" hidden>' +
    '<label><span>Add a device</span> <select data-add><option value="">choose</option></select></label><ul data-chosen></ul>' +
    '<label class="only"><input type="checkbox" data-only> <span>Only rows that differ</span></label>' +
    '<details class="rows-choice" data-choice hidden><summary>Rows</summary><ul class="row-boxes" data-row-boxes></ul></details></div>' +
    `<p class="note" role="status" data-said></p><div data-result></div><p class="note under" data-foot hidden>${betterWords('all')}</p></div>` +
    `${zoneList([CHOICE, PAIRS])}${ZONE_END}` +
    sideZone(
      PAIRS,
      '<p>Each sheet with the one that is most like it, by the family of the first.</p>',
      `${pairGroups(list.rows, families)}${pageTurner(list, '/compare/')}`,
    )
  );
}

function pairGroups(pairs: readonly PairOfSheets[], families: Readonly<Record<string, string>>): string {
  if (pairs.length === 0) return '<p>No two sheets share anything that most do not share.</p>';
  return [...Map.groupBy(pairs, ({ family }) => family)]
    .map(([family, members]) => {
      const links = members.map(
        ({ address, sheets: [one, other] }) =>
          `<li><a href="/compare/${address}/">${escapeText(one.fullName)} and ${escapeText(other.fullName)}</a></li>`,
      );
      return `<div class="pair-group"><h3><a href="/topologies/${family}/">${escapeText(families[family] ?? family)}</a></h3><ul class="lines">${links.join('')}</ul></div>`;
    })
    .join('');
}

/** A sheet and the one most like it side by side, without a script. */
export function pairZone({ family, sheets }: PairOfSheets, { families, rows }: FinderRegister): string {
  const [one, other] = sheets;
  const choice = `/compare/?sheets=${one.slug},${other.slug}`;
  return (
    `${zoneStart(CHOICE)}<div class="compare-head" id="zones"><h1>${escapeText(one.name)}, ${escapeText(other.name)}</h1>` +
    `<p class="soft">No sheet is more like one of them than the other is. Fronts at one scale. ${escapeText(one.fullName)}: ` +
    `<a href="/topologies/${family}/">${escapeText(families[family] ?? family)}</a>. <a class="screen-only" href="${choice}">Choose others or fewer rows</a></p></div>` +
    `${comparisonMarkup(sheets, rows, { onlyDiffering: false, hidden: new Set() })}<p class="note under">${betterWords('both')}</p>${ZONE_END}`
  );
}
