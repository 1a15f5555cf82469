import { counted } from '../units/counted.ts';
import type { MakerPage } from '../corpus/maker-uses.ts';
import type { ListPage } from '../corpus/pages-of.ts';
import { escapeText } from '../figures/markup.ts';
import { pageTurner } from './page-turner.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart } from './zone.ts';

const OPEN = { letter: 'A', title: null, label: 'Makers' } as const;
const BY_NAME = { letter: 'B', title: 'By name', label: 'By name' } as const;

/** Zones of one page of the index of makers. */
export function makerIndexZones(makers: readonly MakerPage[], list: ListPage<MakerPage>): string {
  const note = '<p class="note"><a href="/parts/">By part number</a></p>';
  const open = `<h1>Makers</h1><p class="lead under">${countSentence(makers)}</p>${note}${zoneList([OPEN, BY_NAME])}`;
  const side = '<p>A name stands here when it is on a device, or when a sheet names it as the maker of a part.</p>';
  const matter = makers.length === 0 ? '<p class="lead">No sheet is published yet.</p>' : makerTable(list.rows);
  return `${zoneStart(OPEN)}${open}${ZONE_END}${sideZone(BY_NAME, side, matter + pageTurner(list, '/makers/'))}`;
}

function countSentence(makers: readonly MakerPage[]): string {
  if (makers.length === 0) return 'Names on devices, and on the parts inside them.';
  const onDevices = counted(makers.filter((maker) => maker.devices.length > 0).length, 'name');
  const onParts = counted(makers.filter((maker) => maker.partSheetCount > 0).length, 'name');
  return `${counted(makers.length, 'name')}: ${onDevices} on devices, ${onParts} on parts inside them.`;
}

function makerTable(makers: readonly MakerPage[]): string {
  const heads = ['Maker', ['Devices', 'n'], ['Part numbers', 'n'], ['Sheets with its parts', 'n']] as const;
  return stackTable(heads, `<tbody>${makers.map(rowOf).join('')}</tbody>`);
}

function rowOf(maker: MakerPage): string {
  const alike = maker.perhapsSame.map((other) => other.name).join(', ');
  const same = alike === '' ? '' : ` <span class="sub">perhaps the same as ${escapeText(alike)}</span>`;
  const name = `<a href="/makers/${maker.address}/"><b>${escapeText(maker.name)}</b></a>${same}`;
  return (
    `<tr><th scope="row" class="full">${name}</th>${stackCell('Devices', orDash(maker.devices.length), 'n')}` +
    `${stackCell('Part numbers', orDash(maker.parts.length), 'n')}${stackCell('Sheets with its parts', orDash(maker.partSheetCount), 'n full')}</tr>`
  );
}

function orDash(count: number): string {
  return count === 0 ? '–' : String(count);
}
