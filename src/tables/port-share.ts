import type { Entry } from '../entry/entry.ts';
import { capacityOf } from '../sharing/capacity-of.ts';
import { capacitySentence } from '../sharing/capacity-words.ts';
import { knownOrders } from '../sharing/known-orders.ts';
import { setsToMeasureNext } from '../sharing/sets-to-measure-next.ts';
import type { PortShare, SetRow, ShareMatrix } from '../sharing/share-matrix.ts';
import type { Value } from '../values/value.ts';
import { evidenceOf, numberColumn, rowId, textColumn, valueCell } from './cells.ts';
import type { Bar, Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'port-share';
const TITLE = 'Port shares';

export const portShare: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry, derived }: TableInput): Table | null {
  const matrix = derived.shares;
  if (matrix === null || matrix.ports.length < 2) return null;
  const scale = Math.max(0, ...matrix.rows.flatMap((row) => row.shares.map((share) => share.power.high)), ...limitsOf(entry).values());
  const groups = Array.from({ length: matrix.ports.length }, (_, index) => groupOf(index + 1, matrix, entry, scale));
  return {
    id: ID,
    title: TITLE,
    caption: captionOf(matrix),
    columns: [
      textColumn('in-use', 'In use'),
      ...matrix.ports.map((port) => numberColumn(`port-${rowId(port)}`, port, 'W')),
      numberColumn('sum', 'Sum', 'W'),
      numberColumn('unused', 'Unused', 'W'),
      textColumn('evidence', 'Evidence'),
    ],
    groups: groups.filter((group) => group.rows.length > 0),
    notes: [capacitySentence(capacityOf(entry)), ...notesOf(matrix), onNewPlug(entry)],
  };
}

function captionOf({ ports, counts }: ShareMatrix): string {
  const sets = counts.known + counts.implied + counts.missing;
  const implied = counts.implied === 0 ? '' : `, ${counts.implied} implied`;
  const missing = counts.missing === 0 ? '' : `, ${counts.missing} not known`;
  return `${sets} sets of ${counted(ports.length, 'port')}: ${counts.known} known${implied}${missing}. Power that each port gets with these ports in use.`;
}

function notesOf(matrix: ShareMatrix): string[] {
  const next = setsToMeasureNext(matrix).map(({ key, settles }) =>
    settles.length === 1 ? key : `${key} (settles ${settles.slice(1).join(', ')} too)`,
  );
  const capped = matrix.capped ? ['More than 8 ports: only the sets that are known are listed.'] : [];
  const pooled = matrix.rows.some((row) => row.shares.some((share) => share.pool.length > 1));
  const pools = pooled ? ['A shared power is one pool for the ports named; it counts once in the sum.'] : [];
  const orders = knownOrders(matrix)
    .filter(({ known, all }) => known < all)
    .map(({ key, known, all }) => `${key} depends on the order of plugging: ${known} of ${all} orders known.`);
  return [...capped, ...pools, ...orders, ...(next.length === 0 ? [] : [`Measure next: ${next.join('; ')}.`])];
}

/** Never left out: a reader with a router or a board wants to know. */
function onNewPlug({ sharing }: Entry): string {
  const byPort = Object.entries(sharing?.onNewPlugAt ?? {}).map(([port, what]) => `${port} ${what}`);
  const what = byPort.length > 0 ? byPort.join(', ') : (sharing?.onNewPlug ?? 'not tested');
  return `A running port when another device is plugged in: ${what}.`;
}

function groupOf(count: number, matrix: ShareMatrix, entry: Entry, scale: number): RowGroup {
  const rows = matrix.rows.filter((row) => row.ports.length === count);
  const limits = limitsOf(entry);
  return {
    id: `in-use-${count}`,
    title: `${counted(count, 'port')} in use`,
    glyph: null,
    rows: rows.map((row) => rowFor(row, matrix.ports, limits, scale)),
  };
}

function rowFor(row: SetRow, ports: readonly string[], limits: ReadonlyMap<string, number>, scale: number): Row {
  const order = row.order === null ? '' : `, ${row.order.join(' then ')}`;
  const cells: Cell[] = ports.map((port) => shareCell(row, port, limits.get(port) ?? null, scale));
  const reason = 'not known';
  return {
    id: rowId(`${row.key}${order}`),
    cells: [
      { kind: 'text', text: `${row.key}${order}`, mono: true },
      ...cells,
      row.sum === null ? { kind: 'missing', reason } : valueCell(row.sum),
      row.unused === null ? { kind: 'missing', reason: row.sum === null ? reason : 'total not known' } : valueCell(row.unused),
      { kind: 'text', text: evidenceText(row) },
    ],
  };
}

function shareCell(row: SetRow, port: string, limit: number | null, scale: number): Cell {
  if (!row.ports.includes(port)) return { kind: 'none' };
  const share = row.shares.find((candidate) => candidate.port === port);
  if (share === undefined) return { kind: 'missing', reason: 'not known, measure next' };
  const others = share.pool.filter((other) => other !== port);
  const suffix = others.length === 0 ? {} : { suffix: `shared with ${others.join(', ')}` };
  return { kind: 'value', value: share.power, bar: barOf(share, row, limit, scale), ...suffix };
}

/** One scale for all cells; filled is measured, open printed or otherwise given, dashed implied. */
function barOf(share: PortShare, row: SetRow, limit: number | null, scale: number): Bar {
  const style = row.standing === 'implied' ? 'dashed' : share.power.origin.evidence === 'measured' ? 'filled' : 'open';
  return { fraction: fraction(share.power, scale), tick: limit === null || scale === 0 ? null : limit / scale, style };
}

function fraction(power: Value<'power'>, scale: number): number {
  return scale === 0 ? 0 : power.nominal / scale;
}

function limitsOf(entry: Entry): Map<string, number> {
  return new Map(entry.ports.flatMap((port) => (port.power === null ? [] : [[port.id, port.power.quantity.nominal] as const])));
}

function evidenceText(row: SetRow): string {
  if (row.standing === 'missing') return 'not known';
  const evidence = evidenceByCell(row);
  if (row.standing === 'known') return evidence;
  return row.impliedBy === 'assured' ? `implied, assured ports (${evidence})` : `implied by ${row.impliedBy ?? ''} (${evidence})`;
}

/** One word where all cells of a row are known alike, else one a port: "C1 measured, A1 printed". */
function evidenceByCell({ shares }: SetRow): string {
  const words = new Set(shares.map((share) => share.power.origin.evidence));
  if (words.size < 2) return evidenceOf(shares.map((share) => share.power));
  return shares.map((share) => `${share.port} ${share.power.origin.evidence}`).join(', ');
}
