import { logEfficiency } from '../derived/log-efficiency.ts';
import type { LogChannel, LogSummary } from '../logs/log-summary.ts';
import { formatInterval } from '../units/format.ts';
import type { Known } from '../values/value.ts';
import { isMissing } from '../values/value.ts';
import { detailColumn, numberColumn, rowId, textColumn, valueCell, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { sentenceCase } from '../units/sentence-case.ts';

const ID = 'logs';
const TITLE = 'Logs';

export const logs: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Figures of every log: its channels, its sums over time, and how its power held. */
function build({ derived }: TableInput): Table | null {
  if (derived.logs.length === 0) return null;
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption: 'Means are over time; lowest and highest are rows of the file, never smoothed.',
    columns: [
      textColumn('what', 'What'),
      numberColumn('value', 'Value', null),
      detailColumn(numberColumn('interval', 'Interval', null)),
      numberColumn('lowest', 'Lowest', null),
      numberColumn('highest', 'Highest', null),
    ],
    groups: derived.logs.map((log) => ({ id: rowId(log.id), title: log.id, glyph: null, rows: rowsOf(log) })),
    notes: [],
  });
}

/** Figures of one log, in the order in which they are read. */
function rowsOf(log: LogSummary): readonly Row[] {
  const { power } = log;
  const efficiency = logEfficiency(log);
  const sums: readonly (readonly [string, string, Known])[] = [
    ['peak', 'Peak power, mean over ten seconds', power.peak],
    ['sustained', 'Sustained power, last ten minutes under load', power.sustained],
    ['dropped', 'Fell below 95 % of the peak after', power.droppedAfter],
    ['under-load', 'Time under load', power.underLoad],
    ['energy', 'Energy', log.energy],
    ['charge', 'Charge', log.charge],
    ...(efficiency === null ? [] : [['efficiency', 'Mean power out of mean power in', efficiency] as const]),
    ['duration', 'First to last row', log.duration],
  ];
  const hasPower = !isMissing(power.peak);
  // Where nothing fell and the test was too short to tell, that it did not fall says nothing.
  const isTooShort = isMissing(power.sustained) && isMissing(power.droppedAfter);
  const shown = sums.filter(([id, , value]) => (hasPower ? id !== 'dropped' || !isTooShort : !isMissing(value)));
  return [...log.channels.map((channel) => channelRow(log, channel)), ...shown.map(([id, what, value]) => sumRow(log, id, what, value))];
}

function channelRow(log: LogSummary, { quantity, dimension, mean, lowest, highest }: LogChannel): Row {
  // A tester's own counter rises all the time: its mean says nothing.
  const isCounter = dimension === 'energy' || dimension === 'charge';
  const name = `${sentenceCase(quantity)}${isCounter ? ', counted by the tester' : ', mean'}`;
  const value: Cell = isCounter ? { kind: 'none' } : valueCell(mean);
  return {
    id: `${rowId(log.id)}-column-${rowId(quantity)}`,
    cells: [words(name), value, isCounter ? { kind: 'none' } : intervalCell(mean), valueCell(lowest.value), valueCell(highest.value)],
  };
}

function sumRow(log: LogSummary, id: string, what: string, value: Known): Row {
  const none: Cell = { kind: 'none' };
  return { id: `${rowId(log.id)}-${id}`, cells: [words(what), valueCell(value), intervalCell(value), none, none] };
}

/** "64.6 to 65.4 W": what the instruments and gaps of the log leave open. */
function intervalCell(known: Known): Cell {
  if (isMissing(known)) return { kind: 'none' };
  const { interval, unit } = formatInterval(known, known.dimension);
  const [low, high] = interval?.split(' to ') ?? [];
  return interval === null || low === high ? { kind: 'none' } : { kind: 'text', text: `${interval}\u202f${unit}`, mono: true };
}
