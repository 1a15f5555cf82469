import { escapeText } from '../figures/markup.ts';
import { miniFront } from '../figures/mini-front.ts';
import type { Entry, Port } from '../entry/entry.ts';
import type { SetRow, ShareMatrix } from '../sharing/share-matrix.ts';
import { fixedNumber } from './quantity.ts';
import { countWord, listed, sentence } from './words.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** One line of advice: which ports to use for a need, what they get, and what to know about it. */
export interface PlugRow {
  readonly need: string;
  readonly ports: readonly string[];
  readonly power: string;
  readonly remark: string;
}

/** Watts with at most one decimal, none where it is zero. */
function watts(value: number): string {
  return fixedNumber(value, Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1);
}

/** Advice for readers, read out of the share matrix: one device, two, two alike, all ports. Empty without known sets. */
export function plugRows(matrix: ShareMatrix): readonly PlugRow[] {
  const known = matrix.rows.filter((row) => row.sum !== null && row.shares.length > 0);
  const singles = bestFirst(
    known.filter((row) => row.ports.length === 1),
    sumOf,
  );
  const pairs = known.filter((row) => row.ports.length === 2);
  const [alone] = singles;
  const [heavy] = bestFirst(pairs, (row) => sumOf(row) * 1000 + largest(row));
  const [alike] = bestFirst(pairs, smallest);
  const all = matrix.ports.length > 2 ? matrix.rows.find((row) => row.ports.length === matrix.ports.length) : undefined;
  return [
    ...(alone === undefined ? [] : [aloneRow(alone, singles)]),
    ...(heavy === undefined ? [] : [rowOf('Two devices', heavy, unusedRemark(heavy))]),
    ...(alike === undefined || alike.key === heavy?.key || smallest(alike) <= smallest(heavy ?? alike)
      ? []
      : [rowOf('Two alike', alike, `${watts(smallest(alike))} W at least on each.`)]),
    ...(all === undefined ? [] : [all.sum === null ? unknownRow(all) : rowOf('All in use', all, fallRemark(all, singles))]),
  ];
}

/** The rows as HTML, each with its mini front. */
export function plugList(entry: Entry, matrix: ShareMatrix): string {
  const ports: readonly Port[] = entry.ports.filter((port) => port.direction !== 'input');
  const rows = plugRows(matrix).map(
    (row) =>
      `<li><b>${escapeText(row.need)}</b><span class="front">${miniFront(ports, row.ports)}<span class="q">${escapeText(row.ports.length === ports.length && ports.length > 2 ? 'all ports' : row.ports.join(' + '))}</span></span>` +
      `<span><strong class="q">${escapeText(row.power)}</strong><span class="remark">${sentence(row.remark)}</span></span></li>`,
  );
  return rows.length === 0 ? '' : `<h3>What to plug where</h3><ul class="plugs">${rows.join('')}</ul>`;
}

function bestFirst(rows: readonly SetRow[], score: (row: SetRow) => number): readonly SetRow[] {
  return [...rows].sort((one, other) => score(other) - score(one));
}

function sumOf(row: SetRow): number {
  return row.sum?.nominal ?? 0;
}
function largest(row: SetRow): number {
  return Math.max(...row.shares.map((share) => share.power.nominal));
}
/** The least that one port of the set is sure of; a pool counts as shared out evenly. */
function smallest(row: SetRow): number {
  return Math.min(...row.shares.map((share) => share.power.nominal / share.pool.length));
}

function rowOf(need: string, row: SetRow, remark: string): PlugRow {
  const pools = row.shares.filter((share) => share.pool[0] === share.port);
  return { need, ports: row.ports, power: `${pools.map((share) => watts(share.power.nominal)).join(' + ')}\u00a0W`, remark };
}

function unknownRow(row: SetRow): PlugRow {
  return { need: 'All in use', ports: row.ports, power: '–', remark: 'Not known, measure next.' };
}

function aloneRow(best: SetRow, singles: readonly SetRow[]): PlugRow {
  const equals = singles.filter((row) => sumOf(row) === sumOf(best)).flatMap((row) => row.ports);
  const remark = equals.length > 1 ? `${listed(equals)} each give it alone.` : singles.length > 1 ? 'The only port with this power.' : '';
  return rowOf('One device', best, remark);
}

function unusedRemark(row: SetRow): string {
  const unused = row.unused?.nominal ?? null;
  if (unused === null) return poolRemark(row);
  if (unused <= -0.5) return `${watts(-unused)} W above the total.${poolRemark(row, ' ')}`;
  return `${Math.abs(unused) < 0.5 ? 'Nothing of the total is left over.' : `${watts(unused)} W of the total stay unused.`}${poolRemark(row, ' ')}`;
}

function poolRemark(row: SetRow, before = ''): string {
  const pool = row.shares.find((share) => share.pool.length > 1);
  return pool === undefined ? '' : `${before}${listed(pool.pool)} share ${watts(pool.power.nominal)} W.`;
}

function fallRemark(row: SetRow, singles: readonly SetRow[]): string {
  const fallen = row.shares.filter((share) => {
    const alone = singles.find((single) => single.ports[0] === share.port);
    return alone !== undefined && sumOf(alone) > share.power.nominal + 0.5;
  });
  const kept = row.ports.length - fallen.length;
  const words =
    fallen.length === 0
      ? 'Every port keeps what it gives alone.'
      : kept === 0
        ? 'Every port gives less than alone.'
        : `${listed(fallen.map((share) => share.port))} ${fallen.length === 1 ? 'gives' : 'give'} less than alone.`;
  return `${words}${poolRemark(row, ' ')}`;
}

/** "Four ports make fifteen sets": what the matrix knows, in words. */
export function matrixSentence(matrix: ShareMatrix): string {
  const { known, implied, missing } = matrix.counts;
  const parts = [
    `${counted(known, 'set is', 'sets are')} known`,
    ...(implied === 0
      ? []
      : [`${implied} ${implied === 1 ? 'follows' : 'follow'} because ${matrix.isAssured ? 'capacity is assured' : 'ports are alike'}`]),
    ...(missing === 0 ? [] : [`${missing} ${missing === 1 ? 'is' : 'are'} not known`]),
  ];
  return `${sentenceCase(countWord(matrix.ports.length))} ${matrix.ports.length === 1 ? 'port makes' : 'ports make'} ${counted(known + implied + missing, 'set')}: ${listed(parts)}.`;
}
