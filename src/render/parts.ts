import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import { mark } from '../figures/mark.ts';
import { stageGlyph } from '../figures/stage-glyph.ts';
import { makerAddress, partAddress } from '../corpus/address.ts';
import type { Derived, StressRow } from '../derived/derived.ts';
import type { Entry, Part } from '../entry/entry.ts';
import { isMissing } from '../values/value.ts';
import { benchAddress } from '../tables/bench-address.ts';
import { partGroups, type PartGroup } from './part-groups.ts';
import { hasCallouts, numberedParts, type NumberedPart } from './photo-items.ts';
import { fixedNumber } from './quantity.ts';
import { partAnchor, referenceList } from './references.ts';
import { roleName, worstStress } from './stress.ts';
import { counted } from '../units/counted.ts';

const COLUMNS = ['Ref.', 'Role', 'Rating', 'Maker', 'Part number', 'Evidence'] as const;

/** Identified parts grouped by stage in the order power flows, with their worst stress ratio at the end. */
export function partsView(entry: Entry, derived: Derived): string {
  const heads = COLUMNS.map((head) => `<th scope="col">${head}</th>`).join('');
  const numbered: ReadonlyMap<Part, NumberedPart> = hasCallouts(entry) ? numberedParts(entry) : new Map();
  const bodies = partGroups(entry).map((group) => groupRows(group, derived.stress, numbered));
  return scrollRegion(
    'Parts by stage',
    '<table class="parts"><caption class="vh">Parts by stage, in the order power flows.</caption>' +
      `<thead><tr>${heads}<th scope="col" class="n">Stress ratio</th></tr></thead>${bodies.join('')}</table>`,
  );
}

/** How many parts were identified, and how many of them by their number. */
export function partsSentence(entry: Entry): string {
  const pieces = entry.parts.reduce((sum, part) => sum + part.references.length, 0);
  const numbered = entry.parts.reduce((sum, part) => sum + (part.number === null ? 0 : part.references.length), 0);
  return `${counted(pieces, 'identified part')} in the order power flows, ${numbered === 0 ? 'none' : numbered} of them with a part number.`;
}

function groupRows(group: PartGroup, stress: readonly StressRow[], numbered: ReadonlyMap<Part, NumberedPart>): string {
  const count = group.parts.reduce((sum, part) => sum + part.references.length, 0);
  const glyph = group.glyph === null ? '' : stageGlyph(group.glyph);
  const head = `<tr class="grp"><th colspan="${COLUMNS.length + 1}" scope="rowgroup"><span>${glyph}<b>${escapeText(group.title)}</b> ${counted(count, 'part')}</span></th></tr>`;
  return `<tbody>${head}${group.parts.map((part) => partRow(part, stress, numbered.get(part))).join('')}</tbody>`;
}

function partRow(part: Part, stress: readonly StressRow[], item: NumberedPart | undefined): string {
  const [first = '', ...others] = part.references;
  const anchors = others.map((reference) => `<span id="${partAnchor(reference)}"></span>`).join('');
  const note = part.note === null ? '' : `<span class="pnote">${escapeText(part.note)}</span>`;
  const fed =
    part.fromFactSheet === undefined
      ? ''
      : `<span class="pnote">${escapeText(part.fromFactSheet.join(', '))} from the part’s fact sheet</span>`;
  return (
    `<tr${first === '' ? '' : ` id="${partAnchor(first)}"`}${item === undefined ? '' : ` data-item="${item.number}"`}><th scope="row" class="ref">${anchors}${itemMark(item)}${part.references.length === 0 ? '–' : escapeText(referenceList(part.references))}</th>` +
    `<td>${escapeText(roleName(part.role))}${note}${fed}${sightingLinks(item)}</td><td class="m1">${ratingWords(part)}</td>${makerCell(part)}${numberCell(part)}` +
    `<td class="soft">${part.fitting === 'fitted' ? part.evidence : `<b>${part.fitting}</b>`}</td><td class="n">${ratioCell(part, stress)}</td></tr>`
  );
}

/** The item number as the photos show it, which leads to the first of them. */
function itemMark(item: NumberedPart | undefined): string {
  if (item === undefined) return '';
  const [first] = item.sightings;
  return first === undefined
    ? `<span class="item">${item.number}</span>`
    : `<a class="item" href="#${first.anchor}" aria-label="Item ${item.number}, ${first.words}">${item.number}</a>`;
}

function sightingLinks(item: NumberedPart | undefined): string {
  if (item === undefined || item.sightings.length === 0) return '';
  const links = item.sightings.map(({ anchor, words }) => `<a href="#${anchor}">${words}</a>`);
  return `<span class="pnote">${links.join(' · ')}</span>`;
}

/** How several pieces stand, behind their rating. */
const ARRANGED: Readonly<Record<Part['arrangement'], string>> = {
  single: '',
  parallel: ' in parallel',
  series: ' in series',
  separate: ', each for itself',
};

function ratingWords(part: Part): string {
  const pieces = [part.rating?.written, part.technology, part.package].filter(
    (piece): piece is string => piece !== null && piece !== undefined && piece !== '',
  );
  const arrangement = ARRANGED[part.arrangement];
  const rating = part.rating === null ? '' : madeBy(part, part.evidence === 'measured', part.rating.written);
  const rest = pieces.slice(part.rating === null ? 0 : 1).filter((piece) => part.rating?.written.includes(piece) !== true);
  if (pieces.length === 0) return '<span class="faded">–</span>';
  const measured = part.measured === null ? '' : `<span class="pnote">measured ${madeBy(part, true, part.measured.written)}</span>`;
  return `${rating}${arrangement}${rest.length === 0 ? '' : `<span class="faded">${rating === '' ? '' : ', '}${escapeText(rest.join(', '))}</span>`}${measured}`;
}

/** What was measured of a part leads to what measured it. */
function madeBy({ madeBy: maker = {} }: Part, isMeasured: boolean, written: string): string {
  const address = isMeasured ? benchAddress(maker) : null;
  return address === null ? escapeText(written) : `<a href="${escapeText(address)}">${escapeText(written)}</a>`;
}

/** A maker or a number of more letters than this goes on in a second line, so that one row does not widen all. */
const LONG = 26;

function makerCell(part: Part): string {
  if (part.maker === null) return part.fitting === 'fitted' ? '<td class="faded">not marked</td>' : '<td></td>';
  return `<td${part.maker.length > LONG ? ' class="long"' : ''}><a href="/makers/${makerAddress(part.maker)}/">${escapeText(part.maker)}</a></td>`;
}

function numberCell(part: Part): string {
  if (part.number !== null)
    return `<td class="m1${part.number.length > LONG ? ' long' : ''}"><a href="/parts/${partAddress(part.number)}/">${escapeText(part.number)}</a></td>`;
  return part.marking === null ? '<td></td>' : `<td class="m1 soft">“${escapeText(part.marking)}”</td>`;
}

function ratioCell(part: Part, stress: readonly StressRow[]): string {
  const worst = worstStress(stress, part.references);
  if (worst === null) return '';
  const { row, index } = worst;
  const sign = row.verdict === 'within' ? '' : `${mark(row.verdict)}<span class="vh">${row.verdict} </span>`;
  const words = isMissing(row.ratio) ? 'withheld' : fixedNumber(row.ratio.nominal, 2);
  // Above 1.00 within its limit: without the limit it would read as a part beyond its rating.
  const limit =
    !isMissing(row.ratio) && row.limit !== null && row.limit > 1 ? `<span class="soft"> of ${fixedNumber(row.limit, 2)}</span>` : '';
  return `<a class="mk ${row.verdict}" href="#stress-${index + 1}">${sign}${words}${limit}</a>`;
}
