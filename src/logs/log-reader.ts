import { scaleOf } from '../units/display-units.ts';
import { faultList, type FaultList } from './fault-list.ts';
import { growingRows, type GrowingRows } from './growing-rows.ts';
import type { LogColumns, NumberColumn } from './log-columns.ts';
import type { LogFault } from './log-rule.ts';
import type { LogRows } from './log-rows.ts';
import { measuredCell, measuredPlaces, numberInCell, writtenPlaces, type DecimalSign } from './number-cell.ts';
import { timeBase, type TimeBase } from './time-base.ts';

/** Takes the rows of a log one by one, strictly: a row that does not fit is left out and told. */
export interface LogReader {
  readonly row: (cells: readonly string[], line: number) => void;
  /** Everything that was read. */
  readonly end: () => { readonly rows: LogRows; readonly faults: readonly LogFault[]; readonly assumed: readonly AssumedUnit[] };
}

/** A column that was read in a unit that nobody stated. */
export interface AssumedUnit {
  readonly quantity: string;
  readonly head: string;
  readonly unit: string;
}

/** What is kept while the rows come. */
interface Intake {
  readonly columns: LogColumns;
  readonly decimal: DecimalSign;
  readonly faults: FaultList;
  /** The time, then the numbers in the order of `numbers`. */
  readonly taken: GrowingRows;
  readonly numbers: readonly NumberIntake[];
  base: TimeBase | null;
  start: string | null;
  isTimeRefused: boolean;
  first: number;
  last: number;
  count: number;
  /** Rows from which the distance between row and line changes, with the line of each. */
  readonly jumps: { readonly row: number; readonly line: number }[];
}

interface NumberIntake {
  readonly column: NumberColumn;
  readonly scale: number;
  readonly offset: number;
  /** Whether each cell carries its own unit. */
  hasOwnUnits: boolean;
  places: number;
  blanks: number;
  firstBlank: number;
}

/** Rows whose digits are counted: enough to meet one that does not end in a zero. */
const COUNTED_ROWS = 200;

/** Makes a reader for these columns. */
export function logReader(columns: LogColumns, decimal: DecimalSign): LogReader {
  const intake: Intake = {
    ...{
      columns,
      decimal,
      faults: faultList(),
      taken: growingRows(1 + columns.numbers.length),
      base: null,
      start: null,
      isTimeRefused: false,
    },
    ...{ first: 0, last: Number.NEGATIVE_INFINITY, count: 0, jumps: [] },
    numbers: columns.numbers.map((column) => ({
      ...{ column, scale: scaleOf(column.unit), offset: column.unit.offset },
      ...{ hasOwnUnits: false, places: Number.NEGATIVE_INFINITY, blanks: 0, firstBlank: 0 },
    })),
  };
  return {
    row(cells, line) {
      takeRow(intake, cells, line);
    },
    end: () => finished(intake),
  };
}

function takeRow(intake: Intake, cells: readonly string[], line: number): void {
  if (!fits(intake, cells, line)) return;
  const at = timeOf(intake, cells, line);
  if (Number.isNaN(at)) return;
  const { numbers, decimal, taken } = intake;
  const isEarly = intake.count < COUNTED_ROWS;
  let isSound = true;
  let place = 0;
  for (const number of numbers) {
    const cell = cells[number.column.index] ?? '';
    if (isEarly) lookAtDigits(intake, number, cell);
    const value = number.hasOwnUnits
      ? measuredCell(cell, number.column.dimension, decimal)
      : numberInCell(cell, decimal) * number.scale + number.offset;
    // What is no number is the only thing that differs from itself.
    if (value !== value && !isBlank(number, cell, line)) {
      reportCell(intake, number.column, cell, line);
      isSound = false;
    }
    place += 1;
    taken.put(place, value);
  }
  if (!isSound) return;
  if (intake.count === 0) intake.first = at;
  taken.put(0, at - intake.first);
  taken.keep();
  noteLine(intake, line);
  intake.last = at;
  intake.count += 1;
}

/** Whether the row has as many cells as the heading; blank lines and empty cells beyond the heading's last are nothing. */
function fits({ columns, faults }: Intake, cells: readonly string[], line: number): boolean {
  const wanted = columns.heads.length;
  if (cells.length === wanted) return true;
  const filled = cells.findLastIndex((cell) => cell.trim() !== '') + 1;
  if (filled === 0) return false;
  if (cells.length > wanted && filled <= wanted) return true;
  faults.add('log-row', `This row has ${cells.length} cells, the heading ${wanted}`, {
    in: 'file',
    line,
    cell: Math.min(cells.length, wanted),
  });
  return false;
}

/** Time of the row in seconds, `NaN` where it cannot be read or does not rise. */
function timeOf(intake: Intake, cells: readonly string[], line: number): number {
  const { columns, decimal, faults } = intake;
  const { index, said, dateIndex } = columns.time;
  const written = cells[index] ?? '';
  const date = dateIndex === null ? null : (cells[dateIndex] ?? '');
  if (intake.base === null) {
    if (intake.isTimeRefused) return Number.NaN;
    const told = timeBase(written, date, said, decimal);
    if ('refused' in told) {
      // One faulty first row must not decide for the file; a way of writing that cannot be told does.
      intake.isTimeRefused = told.isUnclear;
      faults.add('log-cell', told.refused, { in: 'file', line, cell: index });
      return Number.NaN;
    }
    intake.base = told;
    intake.start = told.kind === 'instant' ? `${date === null ? '' : `${date.trim()} `}${written.trim()}` : null;
  }
  const at = intake.base.read(written, date);
  if (at > intake.last) return at;
  const place = { in: 'file', line, cell: index } as const;
  if (Number.isNaN(at)) faults.add('log-cell', `"${written}" is not a time${hintOf(written, decimal)}`, place);
  else faults.add('log-time', `"${written}" does not come after the row before it`, place);
  return Number.NaN;
}

/** Counts the decimal places as written, and sees whether the cells carry units of their own. */
function lookAtDigits({ decimal }: Intake, number: NumberIntake, cell: string): void {
  if (cell.trim() === '') return;
  if (number.places === Number.NEGATIVE_INFINITY && Number.isNaN(numberInCell(cell, decimal)))
    number.hasOwnUnits = !Number.isNaN(measuredCell(cell, number.column.dimension, decimal));
  const places = number.hasOwnUnits ? measuredPlaces(cell, number.column.dimension, decimal) : writtenPlaces(cell, decimal);
  if (places > number.places) number.places = places;
}

function isBlank(number: NumberIntake, cell: string, line: number): boolean {
  if (cell.trim() !== '') return false;
  if (number.blanks === 0) number.firstBlank = line;
  number.blanks += 1;
  return true;
}

function reportCell({ faults, decimal }: Intake, { quantity, index }: NumberColumn, cell: string, line: number): void {
  faults.add('log-cell', `"${cell}" is not a number (${quantity})${hintOf(cell, decimal)}`, { in: 'file', line, cell: index });
}

/** What was probably meant. */
function hintOf(cell: string, decimal: DecimalSign): string {
  if (decimal === 'point' && /^\s*[+-]?\d+,\d+\s*$/.test(cell)) return ': the file seems to write decimal commas; say "decimal: comma"';
  if (decimal === 'comma' && /^\s*[+-]?\d+\.\d+\s*$/.test(cell))
    return ': the log is said to write decimal commas, and this is a decimal point';
  return '';
}

function noteLine({ jumps, count }: Intake, line: number): void {
  const last = jumps.at(-1);
  if (last === undefined || line !== last.line + count - last.row) jumps.push({ row: count, line });
}

function finished(intake: Intake): ReturnType<LogReader['end']> {
  const { faults, numbers, jumps, base, columns, taken } = intake;
  for (const { blanks, firstBlank, column } of numbers) {
    if (blanks === 0) continue;
    const message = `${blanks} of ${intake.count} rows have no ${column.quantity}; this is the first`;
    faults.add('log-blank-cell', message, { in: 'file', line: firstBlank, cell: column.index });
  }
  const series = numbers.map(({ column, places, scale, hasOwnUnits }, index) => ({
    ...{ quantity: column.quantity, dimension: column.dimension, head: column.head, values: taken.column(index + 1) },
    resolution: Number(`1e${Number.isFinite(places) ? -places : 0}`) * (hasOwnUnits ? 1 : scale),
  }));
  const assumed = numbers
    .filter(({ column, hasOwnUnits }) => !column.isUnitSaid && !hasOwnUnits)
    .map(({ column }) => ({ quantity: column.quantity, head: column.head, unit: column.unit.symbol }));
  const ofTime = base?.assumed == null ? [] : [{ quantity: 'time', head: columns.time.head, unit: base.assumed }];
  const lineOf = (row: number): number => {
    const jump = jumps.findLast((each) => each.row <= row);
    return jump === undefined ? 1 : jump.line + row - jump.row;
  };
  return {
    rows: { time: taken.column(0), series, start: intake.start, lineOf },
    faults: faults.all(),
    assumed: [...ofTime, ...assumed],
  };
}
