import { SHORTEST_TEST, type SustainedRun } from '../derived/heat/sustained-run.ts';
import { sustainedWords } from '../derived/heat/sustained-words.ts';
import type { Derived } from '../derived/derived.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { logAddress } from './log-address.ts';
import type { Port } from '../entry/entry.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { isMissing, type Known } from '../values/value.ts';
import { detailColumn, factCell, numberColumn, plainGroup, rowId, textColumn, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'sustained-power';
const TITLE = 'Listed, measured, sustained';

export const sustainedPower: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry, derived }: TableInput): Table | null {
  const runs = derived.sustained;
  const rows = [
    ...entry.ports.filter(({ direction }) => direction !== 'input').flatMap((port) => portRows(port, derived, runs)),
    ...runs.filter(({ port }) => !entry.ports.some(({ id }) => id === port)).map((run) => deviceRow(run, derived)),
  ];
  if (runs.length === 0 && !rows.some(({ cells }) => cells[2]?.kind === 'value')) return null;
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption:
      runs.length === 0
        ? 'What is listed and what was measured; how long it lasts was not tested.'
        : `${runs.map(sustainedWords).join('; ')}.`,
    columns: [
      textColumn('port', 'Port'),
      numberColumn('listed', 'Listed', 'W'),
      numberColumn('measured', 'Measured', 'W'),
      numberColumn('sustained', 'Sustained', 'W'),
      numberColumn('dropped', 'Dropped after', 'min'),
      detailColumn(numberColumn('tested', 'Tested for', 'min')),
      detailColumn(numberColumn('ambient', 'Air', '°C')),
      detailColumn(textColumn('from', 'From')),
    ],
    groups: [plainGroup(rows)],
    notes:
      runs.length === 0
        ? []
        : [
            `A test shorter than ${String(SHORTEST_TEST / 60)} minutes does not show what is sustained: a case takes that long to warm up. The figure is the power at the end of the test.`,
          ],
  });
}

function portRows(port: Port, { shares, logs }: Pick<Derived, 'shares' | 'logs'>, runs: readonly SustainedRun[]): readonly Row[] {
  const own = runs.filter((run) => run.port === port.id);
  const listed = port.power?.evidence === 'measured' ? null : port.power;
  const measured = measuredAlone(port.id, shares);
  const start = (name: string): readonly Cell[] => [words(name), factCell(listed, 'not listed'), measured];
  if (own.length === 0) return [{ id: rowId(port.id), cells: [...start(port.id), ...notTested()] }];
  return own.map((run, index) => ({ id: `${rowId(port.id)}-${index + 1}`, cells: [...start(port.id), ...tested(run, logs)] }));
}

/** Power that was measured at a port alone. */
function measuredAlone(port: string, shares: ShareMatrix | null): Cell {
  const found = shares?.rows
    .filter(({ ports }) => ports.length === 1 && ports[0] === port)
    .flatMap((row) => row.shares)
    .find(({ power }) => power.origin.evidence === 'measured');
  return found === undefined ? { kind: 'missing', reason: 'not tested' } : { kind: 'value', value: found.power };
}

function deviceRow(run: SustainedRun, { ratedPower, logs }: Pick<Derived, 'ratedPower' | 'logs'>): Row {
  const name = run.port ?? 'whole device';
  return {
    id: rowId(`${name} ${run.line ?? ''} ${run.log ?? ''}`),
    cells: [words(name), value(ratedPower), value(run.peak), ...tested(run, logs)],
  };
}

function tested({ sustained, droppedAfter, tested: time, ambient, log, line }: SustainedRun, logs: readonly LogSummary[]): readonly Cell[] {
  const from = [log === null ? 'points' : `log ${log}`, line].filter((piece) => piece !== null).join(', ');
  return [
    value(sustained),
    value(droppedAfter),
    value(time),
    value(ambient),
    { kind: 'text', text: from, ...(log === null ? {} : { link: logAddress(logs, log) }) },
  ];
}

function notTested(): readonly Cell[] {
  const none: Cell = { kind: 'none' };
  return [{ kind: 'missing', reason: 'not tested' }, none, none, none, none];
}

function value(known: Known): Cell {
  return isMissing(known) ? { kind: 'missing', reason: known.reason } : { kind: 'value', value: known };
}
