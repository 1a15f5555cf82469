import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { formatNumber } from '../units/format-number.ts';
import { byRole, type RoleGroup } from '../corpus/part-index.ts';
import type { PartPage } from '../corpus/part-uses.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import { escapeText } from '../figures/markup.ts';
import { markWith } from './mark.ts';
import { pageTurner } from './page-turner.ts';
import { roleWords } from './role-words.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart } from './zone.ts';
import { sentence } from './words.ts';

const OPEN = { letter: 'A', title: null, label: 'Parts' } as const;
const BY_ROLE = { letter: 'B', title: 'By role', label: 'By role' } as const;

/** Zones of one page of the index of part numbers. `sheetCount` counts the sheets of the whole site. */
export function partIndexZones(parts: readonly PartPage[], list: ListPage<PartPage>, sheetCount: number): string {
  const shared = parts.filter((part) => part.sheetCount > 1).length;
  const howMany =
    parts.length === 0
      ? ''
      : `${counted(parts.length, 'part number')} on ${counted(sheetCount, 'sheet')}; ${formatNumber(shared, 0)} on more than one. `;
  const lead = `<p class="lead under">${howMany}A part named on two sheets is the first hint that they share a design.</p>`;
  const open = `<h1>Parts</h1>${lead}<p class="note"><a href="/makers/">By maker</a></p>${zoneList([OPEN, BY_ROLE])}`;
  const matter = parts.length === 0 ? '<p class="lead">No sheet names a part number yet.</p>' : partTable(list.rows);
  return `${zoneStart(OPEN)}${open}${ZONE_END}${sideZone(BY_ROLE, sideWords(parts), matter + pageTurner(list, '/parts/'))}`;
}

function sideWords(parts: readonly PartPage[]): string {
  const differing = parts.filter((part) => part.differing.length > 0).length;
  const contradicting =
    differing === 0 ? '' : ` ${counted(differing, 'number')} ${differing === 1 ? 'carries' : 'carry'} ratings that contradict each other.`;
  return (
    '<p>Numbers stand under the role that they have most often, with the rating as found.</p>' +
    `<p class="note ruled">Numbers are kept as marked. Two spellings of one number have a page each and point to each other.${contradicting}</p>`
  );
}

function partTable(parts: readonly PartPage[]): string {
  return stackTable(['Part number', 'Maker', 'Rating as found', ['Sheets', 'n']], byRole(parts).map(groupOf).join(''));
}

function groupOf({ role, parts }: RoleGroup): string {
  const name = `<span><b>${escapeText(sentenceCase(roleWords(role)))}</b> ${counted(parts.length, 'number')}</span>`;
  return `<tbody><tr class="grp"><th scope="rowgroup" colspan="4">${name}</th></tr>${parts.map(rowOf).join('')}</tbody>`;
}

function rowOf(part: PartPage): string {
  const makers = part.makers.length === 0 ? '<span class="faded">– not marked</span>' : escapeText(part.makers.join(', '));
  return (
    `<tr><th scope="row" class="ref"><a href="/parts/${part.address}/">${escapeText(part.number)}</a></th>` +
    `${stackCell('Maker', makers)}${stackCell('Rating as found', ratingWords(part), 'full')}${stackCell('Sheets', part.sheetCount, 'n')}</tr>`
  );
}

function ratingWords({ ratings: [first], differing, perhapsSame }: PartPage): string {
  const found = first === undefined ? '<span class="faded">– none found</span>' : `<span class="mono">${sentence(first.written)}</span>`;
  const differ = differing.length === 0 ? '' : ` <span class="sub">${markWith('warning', ' ratings differ')}</span>`;
  const alike = perhapsSame.map((other) => other.number).join(', ');
  return found + differ + (alike === '' ? '' : ` <span class="sub">perhaps the same as ${escapeText(alike)}</span>`);
}
