import { escapeText } from '../figures/markup.ts';
import type { DrawnSheet } from '../corpus/drawn-sheet.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { efficiencyZone } from './efficiency-zone.ts';
import { benchAnswerList } from './bench-answers.ts';
import { cautionBox, cautionOf } from './caution-box.ts';
import { gainCurveView } from './gain-curve.ts';
import { logsZone } from './logs.ts';
import { offersSide, offersView } from './offers.ts';
import { outlineView } from './outline.ts';
import { partsSentence, partsView } from './parts.ts';
import { usualDevices } from './usual-devices.ts';
import { plugList } from './plug-rows.ts';
import { shareAnswerList } from './share-answers.ts';
import { shareZone } from './share-zone.ts';
import { photosZone } from './photos-zone.ts';
import { powerPathZone } from './power-path.ts';
import { recordZones } from './record-zones.ts';
import { stageByStage } from './stage-by-stage.ts';
import { stressCounts, stressView } from './stress.ts';
import { titleBlock } from './title-block.ts';
import { deviceName, stageKinds } from './device-name.ts';
import { sentence } from './words.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableZones } from './table-zones.ts';
import { contents, prose } from './teardown-prose.ts';
import { voltageZone } from './voltage-zone.ts';

/** Draws everything of a sheet that follows from its own entry; what stands beside other sheets is put in by `teardownZones`. */
export function drawSheet(sheet: PreparedSheet): DrawnSheet {
  const { entry, derived, diagnostics } = sheet;
  return {
    name: deviceName(entry),
    description: entry.summary ?? entry.title,
    number: entry.number,
    revision: derived.revision,
    published: entry.published,
    author: entry.author,
    status: entry.status,
    topology: derived.topology,
    glyphs: [...new Set(stageKinds(entry))],
    recall: recallNotice(sheet),
    title: titleBlock(sheet) + outlineView(entry),
    zones: [inShortZone(sheet), ...figureZones(sheet)].filter((zone) => zone !== null),
    record: recordZones(sheet).filter((zone) => zone !== null),
    diagnostics,
  };
}

/** The part list and the whole sheet as files. */
function dataLinks(slug: string): string {
  const file = (name: string, words: string): string => `<a href="/teardowns/${slug}/${name}">${words}</a>`;
  return `${file('parts.csv', 'CSV')} · ${file('data.json', 'JSON')} · <a href="/data/">what they hold</a>`;
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
  const { shares } = derived;
  const plugs =
    (shares === null ? '' : plugList(entry, shares) + shareAnswerList(entry, shares)) +
    benchAnswerList(derived) +
    (shares === null ? '' : usualDevices(entry, shares));
  return {
    title: 'In short',
    layout: 'side',
    side,
    matter: `<div class="short"><div>${plugs}</div>${cautionBox(cautionOf(entry, derived))}</div>`,
  };
}

/** What belongs to the stress figure where the author placed the figure in the text, or where no part has a rating to be held against. */
function stagesZone(sheet: PreparedSheet): SheetZone | null {
  const { derived, placed } = sheet;
  const matter = derived.stress.length === 0 || placed.includes('stress') ? stageByStage(derived, gainCurveView(sheet)) : '';
  if (matter === '') return null;
  const shown =
    derived.stress.length === 0 ? 'What each stage works at, worked out' : 'What the stress figure says of each stage, in words';
  const side = `<p>${shown}. An indication, not a compliance verdict.</p>`;
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
          matter: `${stressView(derived)}<p class="note under">Whiskers span the corners of every input’s tolerance. An indication, not a compliance verdict.</p>${stageByStage(derived, gainCurveView(sheet))}`,
        },
    efficiencyZone(sheet),
    voltageZone(sheet),
    photosZone(sheet),
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
    logsZone(sheet),
    ...tableZones(sheet),
  ];
}
