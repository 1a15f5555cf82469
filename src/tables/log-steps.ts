import type { LogChange, LogStep, LogSummary } from '../logs/log-summary.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing } from '../values/value.ts';
import { numberColumn, rowId, textColumn, valueCell, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'log-steps';
const TITLE = 'Steps in the logs';

export const logSteps: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Every change of level of every log: named events, and steps that only stand in the numbers. */
function build({ derived }: TableInput): Table | null {
  const stepped = derived.logs.filter(({ steps }) => steps.length > 0);
  if (stepped.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: 'Level before and after, how far it went, and when it stayed within 5 % of the new level.',
    columns: [
      textColumn('at', 'At'),
      textColumn('what', 'Quantity'),
      numberColumn('before', 'Before', null),
      numberColumn('after', 'After', null),
      numberColumn('lowest', 'Lowest', null),
      numberColumn('highest', 'Highest', null),
      numberColumn('settled', 'Settled', null),
    ],
    groups: stepped.map((log) => ({
      id: rowId(log.id),
      title: log.id,
      glyph: null,
      rows: log.steps.flatMap((step, index) => stepRows(log, step, index)),
    })),
    notes: [],
  };
}

function stepRows(log: LogSummary, { at, event, changes }: LogStep, index: number): readonly Row[] {
  const when = formatInterval({ low: at, nominal: at, high: at, significant: 4 }, 'time').text;
  const named = event === null ? when : `${when}, ${event}`;
  return changes.map((change, place) => ({
    id: `${rowId(log.id)}-${index + 1}-${rowId(change.quantity)}`,
    cells: [place === 0 ? words(named) : { kind: 'none' }, ...changeCells(log, change)],
  }));
}

function changeCells(log: LogSummary, { quantity, before, after, lowest, highest, settling }: LogChange): readonly Cell[] {
  return [words(quantity), valueCell(before), valueCell(after), valueCell(lowest), valueCell(highest), settledCell(log, settling)];
}

/** A level that was there in the next row settled within one step between rows, whatever it did in between. */
function settledCell({ interval }: LogSummary, settling: LogChange['settling']): Cell {
  if (isMissing(settling) || settling.nominal > 0) return valueCell(settling);
  return words(`within ${formatInterval({ low: interval, nominal: interval, high: interval, significant: 2 }, 'time').text}`);
}
