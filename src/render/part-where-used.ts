import { counted } from '../units/counted.ts';
import { makerAddress } from '../corpus/address.ts';
import type { PartFacts } from '../corpus/part-facts/part-facts.ts';
import type { PartPage, PartUse } from '../corpus/part-uses.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import { escapeText } from '../figures/markup.ts';
import { linkList } from './inline-list.ts';
import { markWith } from './mark.ts';
import { pageTurner } from './page-turner.ts';
import { partFactSheet } from './part-fact-sheet.ts';
import { partUseRows } from './part-use-rows.ts';
import { roleWords } from './role-words.ts';
import { stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart } from './zone.ts';
import { sentence } from './words.ts';

const OPEN = { letter: 'A', title: null, label: 'The part' } as const;
const USED = { letter: 'B', title: 'Where it is used', label: 'Where it is used' } as const;

/** Ratings that are written out; a part of very many sheets has more. */
const RATINGS_SHOWN = 12;

/** Zones of one page of a part number: what is known of it, and where it was found. */
export function partZones(part: PartPage, facts: PartFacts | null, list: ListPage<PartUse>): string {
  const roles = escapeText(part.roles.map(roleWords).join(', '));
  const name = `<div class="c12 part-name"><h1>${escapeText(part.number)}</h1><p class="under soft">${roles}</p></div>`;
  const known = `<div class="c38">${factList(part)}${differingWords(part)}${alikeWords(part)}</div>`;
  const sheet = facts === null ? '' : partFactSheet(facts, part.number);
  const open = `${zoneStart(OPEN)}<div class="zg">${name}${known}</div>${sheet}${zoneList([OPEN, USED])}${ZONE_END}`;
  const withMaker = part.makers.length > 1;
  const heads = ['No.', 'Device', 'Ref.', 'Role', 'Stage', 'Rating as found', ...(withMaker ? ['Maker'] : [])];
  const table = stackTable(heads, `<tbody>${partUseRows(list.rows, withMaker)}</tbody>`);
  return open + sideZone(USED, USED_WORDS, table + pageTurner(list, `/parts/${part.address}/`));
}

const USED_WORDS =
  '<p>Newest sheet first. Reference, stage and rating are as each sheet found them.</p>' +
  '<p class="note ruled"><a class="all-of" href="/parts/">All parts</a></p>';

function factList(part: PartPage): string {
  const makers = linkList(part.makers.map((maker) => ({ address: `/makers/${makerAddress(maker)}/`, words: maker })));
  const named = makers === '' ? '<dd class="faded">– not marked</dd>' : `<dd>${makers}</dd>`;
  const head = part.ratings.length > 1 ? 'Ratings as found' : 'Rating as found';
  return (
    `<dl class="facts"><div><dt>Maker named with it</dt>${named}</div><div><dt>Sheets</dt><dd>${part.sheetCount}</dd></div>` +
    `<div class="two"><dt>${head}</dt><dd>${ratingWords(part)}</dd></div></dl>`
  );
}

function ratingWords({ ratings }: PartPage): string {
  if (ratings.length === 0) return '<span class="faded">– none found</span>';
  const written = ratings.slice(0, RATINGS_SHOWN).map((rating) => {
    const sheets = ratings.length > 1 ? ` <span class="soft">on ${counted(rating.sheets, 'sheet')}</span>` : '';
    return `<span class="class">${sentence(rating.written)}${sheets}</span>`;
  });
  const others = ratings.length - written.length;
  if (others > 0) written.push(`<span class="class soft">and ${counted(others, 'other writing')}, see B</span>`);
  return written.join(' ');
}

function differingWords({ differing }: PartPage): string {
  if (differing.length === 0) return '';
  const words = `in ${differing.join(', ')}. One sheet may have misread the part, or one number stands for two versions: look at B.`;
  return `<p class="same">${markWith('warning', ' Ratings differ')} ${escapeText(words)}</p>`;
}

function alikeWords({ perhapsSame }: PartPage): string {
  if (perhapsSame.length === 0) return '';
  const alike = linkList(
    perhapsSame.map((other) => ({ address: `/parts/${other.address}/`, words: other.number })),
    'mono',
  );
  return `<p class="same">Perhaps the same as ${alike}: the numbers differ only in case, hyphens or spaces. They are not counted together.</p>`;
}
