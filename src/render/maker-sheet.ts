import { counted } from '../units/counted.ts';
import { partAddress } from '../corpus/address.ts';
import type { CorpusSheet } from '../corpus/corpus-sheet.ts';
import { makerLists } from '../corpus/maker-lists.ts';
import type { MakerPage, MakerPart } from '../corpus/maker-uses.ts';
import { escapeText } from '../figures/markup.ts';
import { deviceTable } from './device-table.ts';
import { linkList } from './inline-list.ts';
import { pageTurner } from './page-turner.ts';
import { roleWords } from './role-words.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart, type ZoneFrame } from './zone.ts';

const OPEN = { letter: 'A', title: null, label: 'The maker' } as const;

/** Zones of one page of a maker: devices under its name, and parts that carry it. */
export function makerZones(maker: MakerPage, page: number): string {
  const { devices, parts, turner } = makerLists(maker, page);
  const turn = pageTurner(turner, `/makers/${maker.address}/`);
  const deviceZone: ZoneFrame = { letter: 'B', title: 'Devices', label: 'Devices' };
  const partZone: ZoneFrame = { letter: devices.length > 0 ? 'C' : 'B', title: 'Parts', label: 'Parts' };
  const zones = [OPEN, ...(devices.length > 0 ? [deviceZone] : []), ...(parts.length > 0 ? [partZone] : [])];
  const listed =
    devices.length === 0 ? '' : sideZone(deviceZone, '<p>Newest sheet first.</p>', deviceTable(devices) + (parts.length === 0 ? turn : ''));
  const carried = parts.length === 0 ? '' : sideZone(partZone, PART_WORDS, partTable(parts) + turn);
  return `${zoneStart(OPEN)}${opening(maker)}${zoneList(zones)}${ZONE_END}${listed}${carried}`;
}

const PART_WORDS =
  '<p>Part numbers that a sheet gives to this maker, each with the newest sheets that have it.</p>' +
  '<p class="note ruled">A maker is named only where a mark or a datasheet tells it.</p>';

function opening(maker: MakerPage): string {
  const shown = maker.unnumbered.slice(0, 8);
  const unnumbered =
    shown.length === 0 ? '' : `<p class="note">Named without a part number on ${sheetLinks(shown)}${moreOf(maker.unnumbered, shown)}.</p>`;
  const alike = linkList(maker.perhapsSame.map((other) => ({ address: `/makers/${other.address}/`, words: other.name })));
  const same =
    alike === ''
      ? ''
      : `<p class="same">Perhaps the same as ${alike}: the names differ only in case, hyphens or spaces. They are not counted together.</p>`;
  const all = '<p class="note under"><a class="all-of" href="/makers/">All makers</a></p>';
  return `<h1>${escapeText(maker.name)}</h1><p class="lead under">${factSentence(maker)}</p>${unnumbered}${same}${all}`;
}

function factSentence(maker: MakerPage): string {
  const facts = [
    ...(maker.devices.length > 0 ? [`${counted(maker.devices.length, 'device')} sold under this name`] : []),
    ...(maker.parts.length > 0 ? [`${counted(maker.parts.length, 'part number')} of this maker`] : []),
    ...(maker.partSheetCount > 0 ? [`its parts on ${counted(maker.partSheetCount, 'sheet')}`] : []),
  ];
  return `${facts.join('; ')}.`;
}

function partTable(parts: readonly MakerPart[]): string {
  const rows = parts.map(({ number, roles, sheets }) => {
    const shown = sheets.slice(0, 4);
    const found = `${sheetLinks(shown)}<span class="soft">${moreOf(sheets, shown)}</span>`;
    return (
      `<tr><th scope="row" class="ref"><a href="/parts/${partAddress(number)}/">${escapeText(number)}</a></th>` +
      `${stackCell('Role', escapeText(roles.map(roleWords).join(', ')))}${stackCell('Found on', found, 'full')}${stackCell('Sheets', sheets.length, 'n')}</tr>`
    );
  });
  return stackTable(['Part number', 'Role', 'Found on', ['Sheets', 'n']], `<tbody>${rows.join('')}</tbody>`);
}

function sheetLinks(sheets: readonly CorpusSheet[]): string {
  return linkList(sheets.map((sheet) => ({ address: `/teardowns/${sheet.slug}/`, words: `${sheet.maker} ${sheet.name}` })));
}

function moreOf(all: readonly unknown[], shown: readonly unknown[]): string {
  return all.length > shown.length ? ` and ${counted(all.length - shown.length, 'other')}` : '';
}
