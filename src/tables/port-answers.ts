import { readerAnswers, type InSet, type PortInCompany } from '../sharing/reader-answers.ts';
import type { PortShare } from '../sharing/share-matrix.ts';
import { numberColumn, plainGroup, rowId, textColumn } from './cells.ts';
import type { Cell, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'port-answers';
const TITLE = 'Each port alone and in company';

export const portAnswers: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry, derived }: TableInput): Table | null {
  const matrix = derived.shares;
  if (matrix === null || matrix.ports.length < 2 || matrix.counts.known + matrix.counts.implied === 0) return null;
  const { ports } = readerAnswers(matrix, entry);
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(ports.length, 'port')}: what each gives alone, with one more device in the worst case, and with all ports in use.`,
    columns: [
      textColumn('port', 'Port'),
      numberColumn('alone', 'Alone', 'W'),
      numberColumn('one-more', 'With one more', 'W'),
      textColumn('worst-with', 'Worst with'),
      numberColumn('all', 'All in use', 'W'),
      textColumn('new-plug', 'When another is plugged in'),
    ],
    groups: [plainGroup(ports.map((port) => rowFor(port, matrix.ports.length)))],
    notes: [...(ports.some(hasPool) ? ['A shared power is the most that the port can get: the ports named draw on it together.'] : [])],
  };
}

function rowFor(answer: PortInCompany, ports: number): Table['groups'][number]['rows'][number] {
  const { port, alone, withOneMore, inAll, onNewPlug } = answer;
  const others = withOneMore?.row.ports.filter((other) => other !== port) ?? [];
  return {
    id: rowId(port),
    cells: [
      { kind: 'text', text: port, mono: true },
      shareCell(alone),
      shareCell(withOneMore?.share ?? null),
      others.length === 0
        ? { kind: 'missing', reason: 'not known' }
        : { kind: 'text', text: others.join(', ') + orderOf(withOneMore), mono: true },
      ports === 2 ? shareCell(withOneMore?.share ?? null) : shareCell(inAll),
      { kind: 'text', text: onNewPlug },
    ],
  };
}

function orderOf(found: InSet | null): string {
  return found?.row.order == null ? '' : ` (${found.row.order.join(' then ')})`;
}

function shareCell(share: PortShare | null): Cell {
  if (share === null) return { kind: 'missing', reason: 'not known' };
  const others = share.pool.filter((port) => port !== share.port);
  return { kind: 'value', value: share.power, ...(others.length === 0 ? {} : { suffix: `shared with ${others.join(', ')}` }) };
}

function hasPool({ withOneMore, inAll }: PortInCompany): boolean {
  return (withOneMore?.share.pool.length ?? 1) > 1 || (inAll?.pool.length ?? 1) > 1;
}
