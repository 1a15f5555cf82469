import type { Accuracy, Bench, Instrument } from '../entry/bench.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import { escapeText } from '../figures/markup.ts';
import { sideZone, ZONE_END, zoneList, zoneStart, type ZoneFrame } from './zone.ts';
import { counted } from '../units/counted.ts';
import { sentence } from './words.ts';

/** What the page needs of each sheet. */
export type SheetOnBench = Pick<SheetSummary, 'slug' | 'maker' | 'name' | 'instruments'>;

const HEAD: ZoneFrame = { letter: 'A', title: null, label: 'The bench' };
const INSTRUMENTS: ZoneFrame = { letter: 'B', title: 'Instruments', label: 'Instruments' };
const METHODS: ZoneFrame = { letter: 'C', title: 'How it is done', label: 'How it is done' };

/** The bench: its instruments with accuracy, calibration and where each was used, and its methods. */
export function benchZones({ instruments, methods }: Bench, sheets: readonly SheetOnBench[]): string {
  const zones = [HEAD, INSTRUMENTS, ...(methods.length === 0 ? [] : [METHODS])];
  return (
    `${zoneStart(HEAD)}<h1>The bench</h1><p class="lead under">${counted(instruments.length, 'instrument')}. Every value that was read on one of them carries its ` +
    'accuracy: as an interval, and into everything that is computed from it. Where a limit lies inside the interval the verdict is “undecided”.</p>' +
    '<p class="note"><a href="/methods/instrument-uncertainty/">How an accuracy becomes an interval</a></p>' +
    `${zoneList(zones)}${ZONE_END}` +
    sideZone(
      INSTRUMENTS,
      '<p>What each is good for, by its maker’s statement. The day is that of the last calibration.</p>',
      instrumentTable(instruments, sheets),
    ) +
    (methods.length === 0 ? '' : sideZone(METHODS, '<p>In the author’s words.</p>', methodList(methods)))
  );
}

function methodList(methods: Bench['methods']): string {
  return `<dl class="says">${methods.map(({ id, name, how, with: instruments, of }) => `<dt id="${escapeText(id)}">${escapeText(name)}</dt><dd>${sentence(how)}${doneWith(instruments)}${alwaysFor(name, of)}</dd>`).join('')}</dl>`;
}

/** The instruments that a method is done with, each a link to its row. */
function doneWith(instruments: readonly string[]): string {
  if (instruments.length === 0) return '';
  return `<span class="sub">With ${instruments.map((id) => `<a href="#${escapeText(id)}">${escapeText(id)}</a>`).join(', ')}.</span>`;
}

/** What a method is used for without being named, where its name does not say it already. */
function alwaysFor(name: string, of: readonly string[]): string {
  const others = of.filter((subject) => subject !== name.toLowerCase());
  return others.length === 0 ? '' : `<span class="sub">Used for ${escapeText(others.join(', '))}.</span>`;
}

function instrumentTable(instruments: readonly Instrument[], sheets: readonly SheetOnBench[]): string {
  if (instruments.length === 0) return '<p class="faded">– none is listed</p>';
  const rows = instruments.map(
    (instrument) =>
      `<tr id="${escapeText(instrument.id)}"><th scope="row" class="full"><b>${sentence(instrument.name)}</b><span class="sub mono">${escapeText(instrument.id)}</span>` +
      `${[instrument.measures, instrument.note].map((line) => (line === null ? '' : `<span class="sub">${sentence(line)}</span>`)).join('')}</th>` +
      `<td>${accuracyList(instrument.accuracies)}</td><td>${instrument.calibrated === null ? '<span class="faded">– not stated</span>' : `<span class="q">${escapeText(instrument.calibrated)}</span>`}</td>` +
      `<td class="full">${usesOf(instrument.id, sheets)}</td></tr>`,
  );
  return `<table class="stack instruments"><caption class="vh">Instruments of the bench.</caption><thead><tr><th scope="col">Instrument</th><th scope="col">Accuracy</th><th scope="col">Calibrated</th><th scope="col">Used on</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function accuracyList(accuracies: readonly Accuracy[]): string {
  if (accuracies.length === 0) return '<span class="faded">– not stated: no interval</span>';
  return `<ul class="plain">${accuracies.map(({ quantity, written }) => `<li>${escapeText(quantity)} <span class="q">${escapeText(/^[±(]/.test(written) ? written : `±(${written})`)}</span></li>`).join('')}</ul>`;
}

function usesOf(id: string, sheets: readonly SheetOnBench[]): string {
  const uses = sheets.flatMap(({ slug, maker, name, instruments = [] }) =>
    instruments
      .filter(([used]) => used === id)
      .map(
        ([, count]) =>
          `<li><a href="/teardowns/${slug}/">${escapeText(`${maker} ${name}`)}</a>, ${counted(count, 'value').replace(' ', '\u00a0')}</li>`,
      ),
  );
  return uses.length === 0 ? '<span class="faded">– no sheet yet</span>' : `<ul class="plain">${uses.join('')}</ul>`;
}

/** Where the list of methods leads to the bench; nothing where the site says nothing of it. */
export function benchLink(bench: Bench | undefined): string {
  return bench === undefined || bench.instruments.length + bench.methods.length === 0
    ? ''
    : ' · <a href="/bench/">The bench: instruments and how it is done</a>';
}
