import { escapeText, percent } from '../figures/markup.ts';
import { shareBar } from '../figures/share-bar.ts';
import type { Entry } from '../entry/entry.ts';
import type { PortShare, SetRow, ShareMatrix } from '../sharing/share-matrix.ts';
import type { Value } from '../values/value.ts';
import { fixedNumber } from './quantity.ts';

/** What all cells of a matrix share: the scale's end in watts, decimals, and each port's own limit. */
interface Scale {
  readonly end: number;
  readonly decimals: number;
  readonly limits: Readonly<Record<string, number | null>>;
}

/** The port-share matrix: rows are sets, grouped by how many ports are in use; bars in cells on one scale. */
export function shareMatrixView(entry: Entry, matrix: ShareMatrix): string {
  const scale = matrixScale(entry, matrix);
  const heads = matrix.ports.map((port) => `<th scope="col" class="n"><b class="mono">${escapeText(port)}</b> W</th>`).join('');
  const groups = bySize(matrix.rows).map((rows) => `<tbody>${rows.map((row) => setRow(row, matrix, scale)).join('')}</tbody>`);
  return (
    `<table class="matrix p${Math.min(matrix.ports.length, 8)}"><caption class="vh">Port shares: power of each port for every set of ports in use, in watts.</caption>` +
    `<thead><tr><th scope="col">In use</th>${heads}<th scope="col" class="n">Sum W</th><th scope="col" class="n wide-only">Unused W</th><th scope="col" class="wide-only ev">Evidence</th></tr></thead>${groups.join('')}</table>`
  );
}

function matrixScale(entry: Entry, matrix: ShareMatrix): Scale {
  const limits: Record<string, number | null> = {};
  for (const port of matrix.ports) {
    const own = entry.ports.find((candidate) => candidate.id === port)?.power?.quantity.nominal ?? null;
    limits[port] = own ?? matrix.falls.find((fall) => fall.port === port)?.highest?.nominal ?? null;
  }
  const powers = matrix.rows.flatMap((row) => row.shares.map((share) => share.power.nominal));
  const end = Math.max(1, ...powers, ...Object.values(limits).map((limit) => limit ?? 0));
  const decimals = powers.some((power) => Math.abs(power - Math.round(power)) > 0.04) ? 1 : 0;
  return { end, decimals, limits };
}

function bySize(rows: readonly SetRow[]): readonly (readonly SetRow[])[] {
  const sizes = [...new Set(rows.map((row) => row.ports.length))];
  return sizes.map((size) => rows.filter((row) => row.ports.length === size));
}

function setRow(row: SetRow, matrix: ShareMatrix, scale: Scale): string {
  const slots = matrix.ports.map((port) => (row.ports.includes(port) ? `<b>${escapeText(port)}</b>` : '<i>·</i>')).join('');
  const name = `<th scope="row"><span class="slots" aria-hidden="true">${slots}</span><span class="vh">${escapeText(row.key)}</span></th>`;
  const cells = matrix.ports.map((port) => shareCell(row, port, scale)).join('');
  const evidence =
    row.standing === 'missing'
      ? '<td class="ev wide-only"><b>not known</b>, measure next</td>'
      : `<td class="ev wide-only">${escapeText(evidenceOf(row))}</td>`;
  const id = `port-share-${row.ports.join('-').replace(/[^A-Za-z0-9_-]/g, '_')}${row.order === null ? '' : `-then-${row.order.join('-').replace(/[^A-Za-z0-9_-]/g, '_')}`}`;
  return `<tr id="${id}">${name}${cells}<td class="n">${numberOr(row.sum, scale)}</td><td class="n wide-only">${numberOr(row.unused, scale)}</td>${evidence}</tr>`;
}

function shareCell(row: SetRow, port: string, scale: Scale): string {
  if (!row.ports.includes(port)) return '<td class="n off-set"><span class="dash0"></span></td>';
  const share = row.shares.find((candidate) => candidate.port === port);
  if (share === undefined) return '<td class="hatch"><span class="vh">not known</span></td>';
  const limit = scale.limits[port] ?? null;
  const bar = shareBar({
    fraction: share.power.nominal / scale.end,
    tick: limit === null ? null : limit / scale.end,
    style: barStyle(row, share),
  });
  const pool = share.pool.length > 1 ? `<abbr title="shared by ${escapeText(share.pool.join(' and '))}">*</abbr>` : '';
  const number = madeBy(share.power, fixedNumber(share.power.nominal, scale.decimals));
  return `<td class="n"><span>${number}${pool}</span>${bar}</td>`;
}

/** A measured share leads to what measured it. */
function madeBy({ origin }: Value, words: string): string {
  const anchor = origin.evidence === 'measured' ? (origin.instrument ?? origin.method) : undefined;
  return anchor === undefined ? words : `<a href="/bench/#${escapeText(anchor)}">${words}</a>`;
}

function barStyle(row: SetRow, share: PortShare): 'filled' | 'open' | 'dashed' {
  if (row.standing === 'implied') return 'dashed';
  return share.power.origin.evidence === 'measured' ? 'filled' : 'open';
}

function evidenceOf(row: SetRow): string {
  const order = row.order === null ? '' : `, ${row.order.join(' then ')}`;
  if (row.standing === 'implied')
    return row.impliedBy === 'assured' ? 'as alone, assured' : row.impliedBy === null ? 'by symmetry' : `as ${row.impliedBy}${order}`;
  const [first, ...others] = row.shares.map((share) => share.power.origin.evidence);
  const evidence =
    first === undefined
      ? '–'
      : others.every((other) => other === first)
        ? first
        : row.shares.map((share) => `${share.port} ${share.power.origin.evidence}`).join(', ');
  return `${evidence}${order}`;
}

function numberOr(value: Value | null, scale: Scale): string {
  return value === null ? '–' : fixedNumber(value.nominal, scale.decimals);
}

/** How far each port can fall: a bar to the lowest share, a line to the highest, on the matrix's scale. */
export function fallsView(matrix: ShareMatrix, entry: Entry): string {
  const { end, decimals } = matrixScale(entry, matrix);
  const rows = matrix.falls.map(({ port, highest, lowest }) => {
    if (highest === null || lowest === null)
      return `<li><b class="mono">${escapeText(port)}</b><span></span><span class="q faded">not known</span></li>`;
    const [low, high] = [lowest.nominal / end, highest.nominal / end];
    const cap = (at: number): string => `<rect class="tk" x="${percent(at)}" y="1" width="1.25" height="10"/>`;
    const drawing = `<svg class="sbar" aria-hidden="true"><rect class="b" y="3" width="${percent(low)}" height="6"/><rect class="tk" x="${percent(low)}" y="5.5" width="${percent(high - low)}" height="1.25"/>${cap(low)}${cap(high)}</svg>`;
    const words =
      highest.nominal === lowest.nominal
        ? `keeps ${fixedNumber(highest.nominal, decimals)}\u00a0W`
        : `${fixedNumber(highest.nominal, decimals)} to ${fixedNumber(lowest.nominal, decimals)}\u00a0W`;
    return `<li><b class="mono">${escapeText(port)}</b>${drawing}<span class="q">${words}</span></li>`;
  });
  return `<h3>How far each port can fall</h3><ul class="falls lines">${rows.join('')}</ul>`;
}

/** What the bars of this matrix mean; only the styles that occur are named. */
export function matrixKey(matrix: ShareMatrix, entry: Entry): string {
  const { end } = matrixScale(entry, matrix);
  const styles = new Set(matrix.rows.flatMap((row) => row.shares.map((share) => barStyle(row, share))));
  return [
    `Bars on one scale, 0 to ${fixedNumber(end, 0)}\u00a0W. The tick is the port’s own limit.`,
    ...(styles.has('filled') ? ['Filled bar: measured.'] : []),
    ...(styles.has('open') ? ['Open bar: printed or stated.'] : []),
    ...(styles.has('dashed')
      ? [matrix.isAssured ? 'Dashed bar: follows because capacity is assured.' : 'Dashed bar: follows because ports are alike.']
      : []),
    ...(matrix.counts.missing > 0 ? ['Hatched: not known.'] : []),
    ...(matrix.rows.some((row) => row.shares.some((share) => share.pool.length > 1))
      ? ['* One pool for both ports; the sum counts it once.']
      : []),
  ].join(' ');
}
