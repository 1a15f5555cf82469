import type { CorpusSheet } from '../corpus/corpus-sheet.ts';
import type { Spread } from '../corpus/spread.ts';
import type { FamilyMember, TopologyFamily } from '../corpus/topology-families.ts';
import { escapeText, px } from '../figures/markup.ts';
import { silhouette, silhouetteScale, type FrontEdges } from '../figures/silhouette.ts';
import { ratingCounts } from './rating-counts.ts';
import { stackCell, stackTable, type StackHead } from './stack-table.ts';

/** Cell that an outline is drawn into, pixels: width, height. */
const OUTLINE = [92, 26] as const;

/** Controllers that are written out; a board of many ports has one for each. */
const CONTROLLERS_SHOWN = 5;

/** What all rows of one table share. */
interface Scales {
  /** Pixels a millimetre. */
  readonly outline: number;
  /** The density that fills the bar, W/cm³. */
  readonly densest: number;
  readonly hasBulk: boolean;
}

/**
 * Sheets of one family side by side, outlines at one scale, densities as bars on one scale; medians under them where two or more are known.
 *
 * @param members The members of this page of the list.
 */
export function memberTable(family: TopologyFamily, members: readonly FamilyMember[]): string {
  const fronts = family.members.map((member) => frontOf(member.sheet)).filter((front) => front !== null);
  const scales = {
    outline: silhouetteScale(fronts, ...OUTLINE),
    densest: family.densityWPerCm3?.high ?? Math.max(0.001, ...members.map((member) => member.sheet.densityWPerCm3 ?? 0)),
    hasBulk: family.members.some((member) => member.bulkMicrofaradsPerWatt !== null),
  };
  const rows = members.map((member) => rowOf(member, scales)).join('');
  return stackTable(headsOf(scales), `<tbody>${rows}</tbody>${footOf(family, scales)}`, 'stack members');
}

function headsOf({ hasBulk }: Scales): readonly StackHead[] {
  const bulk: readonly StackHead[] = hasBulk ? [['Bulk µF/W', 'n']] : [];
  return ['No.', 'Outline', 'Device', 'Controllers', ['Rated W', 'n'], ...bulk, ['W/cm³', 'n'], ['Parts', 'n'], 'Ratings'];
}

function frontOf({ outline }: CorpusSheet): FrontEdges | null {
  return outline === null ? null : { length: outline[0], height: outline[2] };
}

function rowOf({ sheet, controllers, bulkMicrofaradsPerWatt: bulk }: FamilyMember, scales: Scales): string {
  const front = frontOf(sheet);
  const outline = front === null ? '<span class="faded">– no size</span>' : silhouette(front, scales.outline, ...OUTLINE);
  const device = `<a href="/teardowns/${sheet.slug}/"><b>${escapeText(`${sheet.maker} ${sheet.name}`)}</b></a> <span class="sub">${escapeText(sheet.topology)}</span>`;
  return (
    `<tr>${stackCell('No.', escapeText(sheet.number ?? '–'), 'm1')}${stackCell('Outline', outline)}<th scope="row" class="full">${device}</th>` +
    stackCell('Controllers', controllerWords(controllers), 'm1 long full') +
    stackCell('Rated W', sheet.ratedWatts === null ? '–' : px(sheet.ratedWatts), 'n') +
    (scales.hasBulk ? stackCell('Bulk µF/W', bulk === null ? '–' : bulk.toFixed(2), 'n') : '') +
    stackCell('W/cm³', sheet.densityWPerCm3 === null ? '–' : densityBar(sheet.densityWPerCm3, scales.densest), 'n') +
    `${stackCell('Parts', sheet.partsIdentified, 'n')}${stackCell('Ratings', ratingCounts(sheet), 'full')}</tr>`
  );
}

function controllerWords(numbers: readonly string[]): string {
  if (numbers.length === 0) return '<span class="faded why">– not identified</span>';
  const more = numbers.length > CONTROLLERS_SHOWN ? [`${String(numbers.length - CONTROLLERS_SHOWN)} more`] : [];
  return escapeText([...numbers.slice(0, CONTROLLERS_SHOWN), ...more].join(' · '));
}

function densityBar(density: number, densest: number): string {
  const bar = `<rect class="b" width="${px((100 * density) / densest)}" height="5"/><rect class="b0" width="1" height="5"/>`;
  return `${density.toFixed(3)} <svg class="bar1" viewBox="0 0 100 5" preserveAspectRatio="none" aria-hidden="true">${bar}</svg>`;
}

function footOf(family: TopologyFamily, { hasBulk }: Scales): string {
  const { ratedWatts, densityWPerCm3, bulkMicrofaradsPerWatt: bulk, partsIdentified, members } = family;
  if (ratedWatts === null && densityWPerCm3 === null) return '';
  const row = (words: string, className: string, cells: readonly [rated: string, bulk: string, density: string, parts: string]): string =>
    `<th scope="row" colspan="4" class="${className}">${words}</th>${stackCell('Rated W', cells[0], 'n')}` +
    `${hasBulk ? stackCell('Bulk µF/W', cells[1], 'n') : ''}${stackCell('W/cm³', cells[2], 'n')}${stackCell('Parts', cells[3], 'n')}<td></td>`;
  const median = row(`Median of ${members.length} sheets`, 'full', [
    ratedWatts === null ? '–' : px(ratedWatts.median),
    bulk?.median.toFixed(2) ?? '–',
    densityWPerCm3?.median.toFixed(3) ?? '–',
    partsIdentified === null ? '–' : px(partsIdentified.median),
  ]);
  const spread = row('Spread, lowest to highest', 'full soft', [
    spreadWords(ratedWatts, 0),
    spreadWords(bulk, 2),
    spreadWords(densityWPerCm3, 3),
    spreadWords(partsIdentified, 0),
  ]);
  return `<tfoot><tr class="total">${median}</tr><tr>${spread}</tr></tfoot>`;
}

function spreadWords(spread: Spread | null, decimals: number): string {
  if (spread === null) return '–';
  const [low, high] = [spread.low.toFixed(decimals), spread.high.toFixed(decimals)];
  return low === high ? low : `${low} to ${high}`;
}
