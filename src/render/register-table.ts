import { escapeText } from '../figures/markup.ts';
import { silhouette, silhouetteScale } from '../figures/silhouette.ts';
import { glyphChain } from '../figures/stage-glyph.ts';
import { shareBar } from '../figures/share-bar.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import { markWith, ratingMarks } from './mark.ts';
import { fixedNumber } from './quantity.ts';
import { frontOf } from './line-up.ts';
import { pathGlyphs } from './path-glyphs.ts';
import { counted } from '../units/counted.ts';

/** Rows by year, newest first: number, outline at one scale, device, power path, power, density, ratings, date. */
export function registerTable(all: readonly SheetSummary[], sheets: readonly SheetSummary[]): string {
  const fronts = sheets.flatMap((sheet) => (sheet.outline === null ? [] : [frontOf(sheet, sheet.outline)]));
  const scale = silhouetteScale(fronts, 118, 34);
  const densest = Math.max(0.001, ...all.map((sheet) => sheet.densityWPerCm3 ?? 0));
  const years = [...new Set(sheets.map((sheet) => sheet.published.slice(0, 4)))];
  const bodies = years.map((year) => {
    const rows = sheets.filter((sheet) => sheet.published.startsWith(year));
    const count = `<tr class="grp"><th colspan="8" scope="rowgroup"><span><b>${escapeText(year)}</b> ${counted(rows.length, 'sheet')}</span></th></tr>`;
    return `<tbody>${count}${rows.map((sheet) => registerRow(sheet, scale, densest)).join('')}</tbody>`;
  });
  const heads = `<th scope="col">No. Rev.</th><th scope="col">Outline, one scale</th><th scope="col">Device</th><th scope="col">Power path</th><th scope="col" class="n">Rated W</th><th scope="col" class="n">W/cm³</th><th scope="col">Ratings</th><th scope="col" class="n">Issued</th>`;
  return (
    `<table class="register"><caption class="vh">Teardowns, newest first.</caption><thead><tr>${heads}</tr></thead>${bodies.join('')}</table>` +
    '<p class="note under">Ratings: stresses over their derating limit, straddling it, or all within. Outlines are front views.</p>'
  );
}

function registerRow(sheet: SheetSummary, scale: number, densest: number): string {
  const outputs = sheet.ports.length;
  const drawing =
    sheet.outline === null
      ? '<span class="faded small">– size not known</span>'
      : silhouette(frontOf(sheet, sheet.outline), scale, 122, 36);
  const name = sheet.name.startsWith(sheet.maker) ? sheet.name : `${sheet.maker} ${sheet.name}`;
  const density = sheet.densityWPerCm3;
  const densityCell =
    density === null
      ? '<span class="faded">–</span>'
      : `<span>${fixedNumber(density, 3)}<span class="unit-phone">\u00a0W/cm³</span></span>${shareBar({ fraction: density / densest, tick: null, style: 'filled' })}`;
  const rated =
    sheet.ratedWatts === null
      ? '<span class="faded">–</span>'
      : `${fixedNumber(sheet.ratedWatts, Number.isInteger(sheet.ratedWatts) ? 0 : 1)}<span class="unit-phone">\u00a0W</span>`;
  return (
    `<tr><td class="m1 no">${escapeText(sheet.number ?? '–')} <span class="soft">${escapeText(sheet.revision)}</span></td><td class="sil-cell">${drawing}</td>` +
    `<th scope="row" class="dev"><a href="/teardowns/${sheet.slug}/">${escapeText(name)}</a><span class="kind">${escapeText(sheet.kind)}, ${counted(outputs, 'port')}${sheet.status === 'draft' ? ', <b>draft</b>' : ''}${sheet.recall === null ? '' : `, ${markWith('error', '<b>recalled</b>')}`}</span></th>` +
    `<td class="path">${glyphChain(pathGlyphs(sheet.glyphs))}<span class="kind">${escapeText(sheet.topology)}</span></td>` +
    `<td class="n rated">${rated}</td><td class="n dens">${densityCell}</td><td class="marks">${ratingMarks(sheet)}</td><td class="m1 n issued">${escapeText(sheet.published)}</td></tr>`
  );
}
