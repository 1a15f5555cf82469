import type { SheetRank } from '../corpus/sheet-ranks.ts';
import { escapeText } from '../figures/markup.ts';
import type { SheetBeside } from '../corpus/sheet-beside.ts';
import type { PreparedSheet, SiteSettings } from '../corpus/prepared.ts';
import { cautionBox, cautionOf } from './caution-box.ts';
import { offersSide, offersView } from './offers.ts';
import { outlineView } from './outline.ts';
import { partsSentence, partsView } from './parts.ts';
import { plannerLink } from './planner-page.ts';
import { plugList } from './plug-rows.ts';
import { shareAnswerList } from './share-answers.ts';
import { shareZone } from './share-zone.ts';
import { powerPathZone } from './power-path.ts';
import { stageByStage } from './stage-by-stage.ts';
import { stressCounts, stressView } from './stress.ts';
import { titleBlock } from './title-block.ts';
import { sentence } from './words.ts';
import { ZONE_END, zoneLetter, zoneList, zoneStart, zoneTitle, type ZoneFrame } from './zone.ts';
import { besideZone } from './beside-zone.ts';
import { recordZones } from './record-zones.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableZones } from './table-zones.ts';
import { contents, prose } from './teardown-prose.ts';

/** Everything that a teardown page shows beside its own sheet. */
export interface TeardownSurroundings {
  readonly site: SiteSettings;
  readonly beside: SheetBeside;
}

/** All zones of a teardown in order; a zone without data is left out and the letters close up. */
export function teardownZones(sheet: PreparedSheet, around: TeardownSurroundings): string {
  const parts = [
    inShortZone(sheet),
    ...figureZones(sheet),
    besideZone(around.beside, { slug: sheet.entry.slug, topology: sheet.derived.topology }),
    ...recordZones(sheet, around.beside.findings),
  ].filter((part) => part !== null);
  const frames: ZoneFrame[] = [
    { letter: 'A', title: null, label: 'Title block and outline' },
    ...parts.map((part, index) => ({ letter: zoneLetter(index + 1), title: part.title, label: part.title })),
  ];
  const first = frames[0];
  const titleZone =
    first === undefined
      ? ''
      : `${zoneStart({ ...first, className: 'za' })}${titleBlock(sheet, around.site, densityRank(around.beside))}${outlineView(sheet.entry)}${ZONE_END}`;
  const rest = parts.map((part, index) => {
    const frame = frames[index + 1];
    return frame === undefined ? '' : zoneHtml(frame, part);
  });
  return recallNotice(sheet) + titleZone + zoneList(frames.slice(1)) + rest.join('');
}

/** The part list and the whole sheet as files. */
function dataLinks(slug: string): string {
  const file = (name: string, words: string): string => `<a href="/teardowns/${slug}/${name}">${words}</a>`;
  return `${file('parts.csv', 'CSV')} · ${file('data.json', 'JSON')} · <a href="/data/">what they hold</a>`;
}

/** The rank that the title block has room for. */
function densityRank({ ranks }: SheetBeside): SheetRank | null {
  return ranks.find(({ measure }) => measure === 'density') ?? null;
}

function zoneHtml(frame: ZoneFrame, part: SheetZone): string {
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

function inShortZone({ entry, derived }: PreparedSheet): SheetZone {
  const summary = entry.summary === null ? '' : `<p class="summary">${sentence(entry.summary)}</p>`;
  const side = `<p class="headline">${sentence(entry.title)}</p>${summary}${stressCounts(derived.stress)}`;
  const plugs =
    derived.shares === null
      ? ''
      : plugList(entry, derived.shares) + shareAnswerList(entry, derived.shares) + plannerLink(entry, derived.shares);
  return {
    title: 'In short',
    layout: 'side',
    side,
    matter: `<div class="short"><div>${plugs}</div>${cautionBox(cautionOf(entry, derived))}</div>`,
  };
}

/** What belongs to the stress figure where the author placed the figure in the text. */
function stagesZone({ derived, placed }: PreparedSheet): SheetZone | null {
  const matter = placed.includes('stress') ? stageByStage(derived) : '';
  if (matter === '') return null;
  const side = '<p>What the stress figure says of each stage, in words. An indication, not a compliance verdict.</p>';
  return { title: 'Stage by stage', layout: 'side', side, matter };
}

function figureZones(sheet: PreparedSheet): readonly (SheetZone | null)[] {
  const { entry, derived } = sheet;
  const placed = (id: string): boolean => sheet.placed.includes(id);
  const offers = offersView(entry);
  return [
    powerPathZone(sheet),
    shareZone(sheet),
    offers === '' || placed('offers') ? null : { title: 'Offers', layout: 'side', side: offersSide(entry), matter: offers },
    derived.stress.length === 0 || placed('stress')
      ? null
      : {
          title: 'Stress against rating',
          layout: 'full',
          side: 'Worst corner of line, load and output voltage for each part that has a rating. The heavy tick is the derating limit of the policy; the thin line at <span class="mono">1.00</span> is the rating.',
          matter: `${stressView(derived)}<p class="note under">Whiskers span the corners of every input’s tolerance. An indication, not a compliance verdict.</p>${stageByStage(derived)}`,
        },
    entry.parts.length === 0 || placed('parts')
      ? null
      : {
          title: 'Parts by stage',
          layout: 'full',
          side: partsSentence(entry),
          matter: `${partsView(entry, derived)}<p class="note under">Evidence is that of the rating; ratio and mark are those of the stress table. ${dataLinks(entry.slug)}</p>`,
        },
    sheet.html.trim() === ''
      ? null
      : { title: 'On the bench', layout: 'side', side: contents(sheet), matter: `<div class="prose">${prose(sheet)}</div>` },
    stagesZone(sheet),
    ...tableZones(sheet),
  ];
}
