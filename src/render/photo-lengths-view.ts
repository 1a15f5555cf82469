import { READING_ERROR, TILT_SLOPE, type PhotoLength } from '../derived/photo-lengths/photo-lengths.ts';
import { escapeText } from '../figures/markup.ts';
import { isMissing, type Known } from '../values/value.ts';
import { fixedNumber, quantityWords } from './quantity.ts';
import { scrollRegion } from './scroll-region.ts';

/** "6.4 mm", or why there is none. */
export function shownLength(length: Known<'length'>): string {
  return isMissing(length) ? `withheld, ${length.reason}` : quantityWords(length, { unit: 'mm' });
}

/** The distances read out of photos, each with its interval and its working; empty where none is marked. */
export function photoLengthsView(lengths: readonly PhotoLength[]): string {
  if (lengths.length === 0) return '';
  const heads = ['Distance', 'Photo', 'Length', 'Interval', 'Working'].map(
    (head, index) => `<th scope="col"${index === 2 || index === 3 ? ' class="n"' : ''}>${head}</th>`,
  );
  const table = `<table class="data"><caption class="vh">Lengths measured in the photos</caption><thead><tr>${heads.join('')}</tr></thead><tbody>${lengths.map(lengthRow).join('')}</tbody></table>`;
  return `<h3 class="ph-lengths">Measured in the photos</h3>${scrollRegion('Lengths measured in the photos', table)}<p class="note under">${NOTE}</p>`;
}

const NOTE =
  'From a photo: an indication only, never decides. <a href="/methods/photo-length/">Length in a photo</a>: the known length times the pixels of the marks over its own. ' +
  `Each mark is read to ${READING_ERROR * 100} % of the longer edge (1.5 px on a screen of 1000, common practice); either line may rise ${TILT_SLOPE * 100} % towards the camera unseen ` +
  '(<a href="/methods/tilt-foreshortening/">foreshortening by tilt</a>). Marks that lie nearer to the camera than the known length look longer, which is in no interval.';

function lengthRow(row: PhotoLength): string {
  const { name, photo, length, working } = row;
  const start = `<tr><th scope="row" class="ref plain">${escapeText(name)}</th><td><a href="#photo-${photo}">photo\u00a0${photo}</a></td>`;
  if (isMissing(length) || working === null) return `${start}<td class="faded" colspan="3">– ${escapeText(shownLength(length))}</td></tr>`;
  const pixels = (value: number): string => fixedNumber(value, 0);
  const reference = length.origin.evidence === 'computed' ? length.origin.inputs['reference'] : undefined;
  const known = reference === undefined ? '' : escapeText(quantityWords(reference, { unit: 'mm' }));
  return (
    `${start}<td class="n">${escapeText(quantityWords(length, { unit: 'mm' }))}</td><td class="n">${escapeText(intervalWords(length.low, length.high))}</td>` +
    `<td class="m1">${known} × ${pixels(working.marked.nominal)} px / ${pixels(working.scale.nominal)} px</td></tr>`
  );
}

/** Millimetres to the tenth: the reading of a photo carries no more. */
function intervalWords(low: number, high: number): string {
  return `${fixedNumber(low * 1000, 1)} to ${fixedNumber(high * 1000, 1)}\u00a0mm`;
}

/** What the photos indicate for places of insulation, to stand beside the table that judges them; empty where nothing does. */
export function photoIndications(lengths: readonly PhotoLength[]): string {
  const placed = lengths.filter(({ place, length }) => place !== null && !isMissing(length));
  if (placed.length === 0) return '';
  const items = placed.map(({ place, name, photo, length }) => {
    const interval = isMissing(length) ? '' : ` (${intervalWords(length.low, length.high)})`;
    return `<li><b>${escapeText(place ?? '')}</b>, ${escapeText(name)}: <span class="q">${escapeText(shownLength(length))}</span>${interval}, <a href="#photo-${photo}">photo\u00a0${photo}</a></li>`;
  });
  return `<div class="ph-indicated"><p>From a photo: an indication only, never decides.</p><ul>${items.join('')}</ul></div>`;
}
