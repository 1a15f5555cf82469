import { escapeText } from '../figures/markup.ts';

/** Letters of zones in order; I and O are left out, as on any drawing sheet. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** Letter of the nth zone of a sheet, from 0. Sheets with more zones than letters go on with A2, B2 … */
export function zoneLetter(index: number): string {
  const turn = Math.floor(index / LETTERS.length);
  return `${LETTERS.charAt(index % LETTERS.length)}${turn === 0 ? '' : turn + 1}`;
}

/** What a zone's frame needs; `title` null for zone A, whose heading is the page's own. */
export interface ZoneFrame {
  readonly letter: string;
  readonly title: string | null;
  /** Words for the list of zones and for readers of text, where there is no title. */
  readonly label: string;
  readonly className?: string;
}

/** Opening of a zone: its letter in both margins (sticky while the zone scrolls) and in a box on the phone. */
export function zoneStart(zone: ZoneFrame): string {
  const { letter, label } = zone;
  const named = zone.title === null ? `aria-label="${escapeText(label)}"` : `aria-labelledby="${letter}-t"`;
  return (
    `<section class="zone${zone.className === undefined ? '' : ` ${zone.className}`}" id="${letter}" ${named}>` +
    `<div class="zl"><a href="#${letter}" aria-label="Zone ${letter}, ${escapeText(label)}">${letter}</a></div><div class="zr" aria-hidden="true"><span>${letter}</span></div>` +
    `<a class="zb" href="#zones" aria-label="Zone ${letter}, to the list of zones">${letter}</a>`
  );
}

export const ZONE_END = '</section>';

/** Heading of a zone; goes wherever in the zone's grid the title stands. */
export function zoneTitle(zone: ZoneFrame): string {
  return zone.title === null ? '' : `<h2 id="${zone.letter}-t">${escapeText(zone.title)}</h2>`;
}

/** A zone with title and reading text in columns 1–2 and matter in 3–8. */
export function sideZone(zone: ZoneFrame, side: string, matter: string): string {
  return `${zoneStart(zone)}<div class="zg"><div class="c12">${zoneTitle(zone)}<div class="side">${side}</div></div><div class="c38">${matter}</div></div>${ZONE_END}`;
}

/** A zone with title and one sentence above matter over all eight columns. */
export function fullZone(zone: ZoneFrame, lead: string, matter: string): string {
  const above = `<div class="c12">${zoneTitle(zone)}</div><div class="c37">${lead === '' ? '' : `<p class="lead">${lead}</p>`}</div>`;
  return `${zoneStart(zone)}<div class="zg">${above}<div class="c18">${matter}</div></div>${ZONE_END}`;
}

/** Opening and end of the list of a sheet's zones, where a phone's letter boxes lead back to; lines stand between. */
export const ZONE_LIST_START = '<nav class="zones" id="zones" aria-label="Zones of this sheet"><ul>';
export const ZONE_LIST_END = '</ul></nav>';

/** List of a sheet's zones. */
export function zoneList(zones: readonly ZoneFrame[]): string {
  return `${ZONE_LIST_START}${zones.map(zoneListItem).join('')}${ZONE_LIST_END}`;
}

/** One line of the list of zones. */
export function zoneListItem(zone: ZoneFrame): string {
  return `<li><a href="#${zone.letter}"><b>${zone.letter}</b>${escapeText(zone.title ?? zone.label)}</a></li>`;
}
