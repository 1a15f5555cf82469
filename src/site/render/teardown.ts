import { escapeText } from '../../figures/markup.ts';
import { placeProse } from '../../markdown/place-prose.ts';
import type { PreparedSheet, SiteSettings } from '../../pipeline/prepared.ts';
import type { Entry } from '../../entry/entry.ts';
import type { Table } from '../../tables/table.ts';
import { href } from '../href.ts';
import { cautionBox, cautionOf } from './caution-box.ts';
import { correctionList, findingList, findingsSentence } from './findings.ts';
import { measurementsView } from './measurements.ts';
import { offersSide, offersView } from './offers.ts';
import { outlineView } from './outline.ts';
import { partsSentence, partsView } from './parts.ts';
import { matrixSentence, plugList } from './plug-rows.ts';
import { fallsView, matrixKey, shareMatrixView } from './port-shares.ts';
import { stressCounts, stressView } from './stress.ts';
import { tableView } from './table-view.ts';
import { titleBlock, type Rank } from './title-block.ts';
import { sentence } from './words.ts';
import { workingView } from './working.ts';
import { ZONE_END, zoneLetter, zoneList, zoneStart, zoneTitle, type ZoneFrame } from './zone.ts';

/** Everything that a teardown page shows beside its own sheet. */
export interface TeardownSurroundings {
  readonly site: SiteSettings;
  readonly rank: Rank | null;
  /** Base path, for links inside the author's text. */
  readonly base: string;
}

/** A zone before it has its letter. */
interface Part {
  readonly title: string;
  readonly layout: 'side' | 'full';
  /** Reading text in columns 1–2, or the sentence above. */
  readonly side: string;
  readonly matter: string;
}

/** Tables that a figure zone of its own shows, unless the author has placed them in the text. */
const OWN_ZONES: ReadonlySet<string> = new Set(['port-share', 'port-falls', 'offers', 'stress', 'parts', 'parts-by-role', 'computed']);

/** Short tables of figures that stand together in one zone. */
const SIZE_AND_SUPPLY: ReadonlySet<string> = new Set(['size', 'input', 'stored-energy']);

/** All zones of a teardown in order; a zone without data is left out and the letters close up. */
export function teardownZones(sheet: PreparedSheet, around: TeardownSurroundings): string {
  const parts = [inShortZone(sheet), ...figureZones(sheet, around), ...recordZones(sheet)].filter((part) => part !== null);
  const frames: ZoneFrame[] = [
    { letter: 'A', title: null, label: 'Title block and outline' },
    ...parts.map((part, index) => ({ letter: zoneLetter(index + 1), title: part.title, label: part.title })),
  ];
  const first = frames[0];
  const titleZone =
    first === undefined
      ? ''
      : `${zoneStart({ ...first, className: 'za' })}${titleBlock(sheet, around.site, around.rank)}${outlineView(sheet.entry)}${ZONE_END}`;
  const rest = parts.map((part, index) => {
    const frame = frames[index + 1];
    return frame === undefined ? '' : zoneHtml(frame, part);
  });
  return recallNotice(sheet) + titleZone + zoneList(frames.slice(1)) + rest.join('');
}

function zoneHtml(frame: ZoneFrame, part: Part): string {
  const side =
    part.layout === 'side'
      ? `<div class="side">${part.side}</div></div><div class="c38">${part.matter}</div>`
      : `</div><div class="c37">${part.side === '' ? '' : `<p class="lead">${part.side}</p>`}</div><div class="c18">${part.matter}</div>`;
  return `${zoneStart(frame)}<div class="zg"><div class="c12">${zoneTitle(frame)}${side}</div>${ZONE_END}`;
}

/** A recall stands above everything else on the sheet. */
function recallNotice({ entry }: PreparedSheet): string {
  const { recall } = entry;
  if (recall === null) return '';
  const link = /^https?:\/\//.test(recall.url)
    ? `<a href="${escapeText(recall.url)}" rel="noopener">notice of ${escapeText(recall.authority)}</a>`
    : `notice of ${escapeText(recall.authority)}`;
  return `<div class="recall">${cautionBox({ title: 'Recalled', value: null, paragraphs: [`${escapeText(recall.hazard)}. See the ${link}, ${escapeText(recall.date)}. Stop using it until you have read it.`], sign: 'plain' })}</div>`;
}

function inShortZone({ entry, derived }: PreparedSheet): Part {
  const summary = entry.summary === null ? '' : `<p class="summary">${sentence(entry.summary)}</p>`;
  const side = `<p class="headline">${sentence(entry.title)}</p>${summary}${stressCounts(derived.stress)}`;
  const plugs = derived.shares === null ? '' : plugList(entry, derived.shares);
  return {
    title: 'In short',
    layout: 'side',
    side,
    matter: `<div class="short"><div>${plugs}</div>${cautionBox(cautionOf(entry, derived))}</div>`,
  };
}

function figureZones(sheet: PreparedSheet, around: TeardownSurroundings): readonly (Part | null)[] {
  const { entry, derived } = sheet;
  const placed = (id: string): boolean => sheet.placed.includes(id);
  const offers = offersView(entry);
  const shares = derived.shares;
  return [
    shares === null || shares.ports.length < 2 || placed('port-share')
      ? null
      : {
          title: 'Port shares',
          layout: 'side',
          side: `<p>${escapeText(matrixSentence(shares))}</p>${newPlug(sheet)}${fallsView(shares, entry)}<p class="note ruled">${escapeText(matrixKey(shares, entry))}</p>`,
          matter: shareMatrixView(entry, shares),
        },
    offers === '' || placed('offers') ? null : { title: 'Offers', layout: 'side', side: offersSide(entry), matter: offers },
    derived.stress.length === 0 || placed('stress')
      ? null
      : {
          title: 'Stress against rating',
          layout: 'full',
          side: 'Worst corner of line, load and output voltage for each part that has a rating. The heavy tick is the derating limit of the policy; the thin line at <span class="mono">1.00</span> is the rating.',
          matter: `${stressView(derived)}<p class="note under">Whiskers span the corners of every input’s tolerance. An indication, not a compliance verdict.</p>`,
        },
    entry.parts.length === 0 || placed('parts')
      ? null
      : {
          title: 'Parts by stage',
          layout: 'full',
          side: partsSentence(entry),
          matter: `${partsView(entry, derived)}<p class="note under">Evidence is that of the rating; ratio and mark are those of the stress table.</p>`,
        },
    sheet.html.trim() === ''
      ? null
      : { title: 'On the bench', layout: 'side', side: contents(sheet), matter: `<div class="prose">${prose(sheet, around.base)}</div>` },
    sizeAndSupplyZone(sheet.tables.filter((table) => SIZE_AND_SUPPLY.has(table.id) && !placed(table.id))),
    ...sheet.tables.filter((table) => !OWN_ZONES.has(table.id) && !SIZE_AND_SUPPLY.has(table.id) && !placed(table.id)).map(tableZone),
    measurementsZone(entry),
  ];
}

function newPlug({ entry }: PreparedSheet): string {
  const behaviour = entry.sharing?.onNewPlug ?? null;
  const words = {
    keeps: 'A new plug leaves the others running.',
    dips: 'A new plug makes the others dip for a moment.',
    drops: 'A new plug drops the others for a moment.',
    'not tested': 'What a new plug does to the others was not tested.',
  } as const;
  return behaviour === null ? '' : `<p>${words[behaviour]}</p>`;
}

function tableZone(table: Table): Part {
  return { title: table.title, layout: 'side', side: `<p>${escapeText(table.caption)}</p>`, matter: tableView(table) };
}

/** Size, input and stored energy side by side: short tables with their own captions. */
function sizeAndSupplyZone(tables: readonly Table[]): Part | null {
  if (tables.length === 0) return null;
  const matter = `<div class="side-by-side">${tables.map((table) => `<div>${tableView(table, { caption: 'shown' })}</div>`).join('')}</div>`;
  return {
    title: 'Size and supply',
    layout: 'side',
    side: '<p>What the box takes up, what it draws, and what it stores. The working is under <em>How it was computed</em>.</p>',
    matter,
  };
}

function measurementsZone(entry: Entry): Part | null {
  const matter = measurementsView(entry);
  return matter === ''
    ? null
    : { title: 'Measurements', layout: 'side', side: '<p>As read on the bench, each with its conditions.</p>', matter };
}

/** Headings of the text as a list, where there are enough to need one. */
function contents(sheet: PreparedSheet): string {
  const top = sheet.headings.filter((heading) => heading.depth <= 2);
  if (top.length < 3) return '';
  return `<ul class="contents">${top.map((heading) => `<li><a href="#${escapeText(heading.id)}">${escapeText(heading.text)}</a></li>`).join('')}</ul>`;
}

/** The author's text with the tables where the author placed them; matrix, stress and parts keep their own drawing. */
function prose(sheet: PreparedSheet, base: string): string {
  return placeProse(sheet.html, base)
    .map((piece) => (piece.kind === 'html' ? piece.html : `<div class="placed">${placedTable(sheet, piece.id)}</div>`))
    .join('');
}

function placedTable(sheet: PreparedSheet, id: string): string {
  const { entry, derived } = sheet;
  if (id === 'port-share' && derived.shares !== null)
    return (
      shareMatrixView(entry, derived.shares) +
      `<p class="note under">${escapeText(matrixKey(derived.shares, entry))}</p>${sheet.placed.includes('port-falls') ? '' : fallsView(derived.shares, entry)}`
    );
  if (id === 'port-falls' && derived.shares !== null) return fallsView(derived.shares, entry);
  if (id === 'stress' && derived.stress.length > 0) return stressView(derived);
  if (id === 'parts' && entry.parts.length > 0) return partsView(entry, derived);
  if (id === 'offers' && offersView(entry) !== '') return offersView(entry);
  const table = sheet.tables.find((candidate) => candidate.id === id);
  return table === undefined ? '' : tableView(table, { caption: 'shown' });
}

function recordZones(sheet: PreparedSheet): readonly (Part | null)[] {
  const { entry, derived, diagnostics } = sheet;
  const named = Object.keys(derived.named).length;
  return [
    {
      title: 'Findings',
      layout: 'full',
      side: escapeText(findingsSentence(diagnostics)),
      matter: diagnostics.length === 0 ? '' : findingList(diagnostics),
    },
    {
      title: 'Corrections',
      layout: 'side',
      side: `<p>Changes to a published number are listed for good.</p>`,
      matter: correctionList(entry.corrections, entry.published),
    },
    named === 0
      ? null
      : {
          title: 'How it was computed',
          layout: 'full',
          side: `Each computed value with its formula, what went in and how that is known. Formulas have their own pages under <a href="${href('/methods/')}">Methods</a>.`,
          matter: workingView(entry, derived),
        },
    entry.sources.length === 0
      ? null
      : { title: 'Sources', layout: 'side', side: '<p>What the author read for this sheet.</p>', matter: sourceList(sheet) },
  ];
}

function sourceList({ entry }: PreparedSheet): string {
  const items = entry.sources.map(({ title, url, note }) => {
    const words =
      url !== null && /^https?:\/\//.test(url) ? `<a href="${escapeText(url)}" rel="noopener">${escapeText(title)}</a>` : escapeText(title);
    return `<li>${words}${note === null ? '' : ` <span class="soft">${escapeText(note)}</span>`}</li>`;
  });
  return `<ul class="lines">${items.join('')}</ul>`;
}
