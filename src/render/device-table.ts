import type { CorpusSheet } from '../corpus/corpus-sheet.ts';
import { escapeText, px } from '../figures/markup.ts';
import { ratingCounts } from './rating-counts.ts';
import { stackCell, stackTable } from './stack-table.ts';

/** Devices in a list: number, name and topology, rated power, density, ratings, date of issue. */
export function deviceTable(sheets: readonly CorpusSheet[]): string {
  const heads = ['No.', 'Device', ['Rated W', 'n'], ['W/cm³', 'n'], 'Ratings', ['Issued', 'n']] as const;
  return stackTable(heads, `<tbody>${sheets.map(rowOf).join('')}</tbody>`);
}

function rowOf(sheet: CorpusSheet): string {
  const { slug, number, name, topology, ratedWatts, densityWPerCm3, published } = sheet;
  const device = `<a href="/teardowns/${slug}/"><b>${escapeText(name)}</b></a> <span class="sub">${escapeText(topology)}</span>`;
  return (
    `<tr>${stackCell('No.', escapeText(number ?? '–'), 'm1')}<th scope="row">${device}</th>` +
    stackCell('Rated W', ratedWatts === null ? '–' : px(ratedWatts), 'n') +
    stackCell('W/cm³', densityWPerCm3 === null ? '–' : densityWPerCm3.toFixed(3), 'n') +
    `${stackCell('Ratings', ratingCounts(sheet))}${stackCell('Issued', escapeText(published), 'n')}</tr>`
  );
}
