import { travelWords } from '../derived/power-bank/travel-words.ts';
import type { DeliveredRow, PowerBankFigures, RechargeRow } from '../derived/power-bank/power-bank-figures.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { logAddress } from './log-address.ts';
import { numberColumn, rowId, textColumn, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const ID = 'power-bank';
const TITLE = 'Energy in and out';

export const powerBank: TableDeclaration = { id: ID, title: TITLE, build };

const NONE: Cell = { kind: 'none' };

function build({ derived: { bank, logs } }: TableInput): Table | null {
  if (bank === null || (isMissing(bank.stored) && isMissing(bank.rated.energy) && bank.delivered.length === 0)) return null;
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption: captionOf(bank),
    columns: [
      textColumn('what', 'What'),
      numberColumn('energy', 'Energy', 'Wh'),
      numberColumn('ratio', 'Of the cells', '%'),
      numberColumn('of-rated', 'Of the rated', '%'),
      numberColumn('time', 'Time', 'h'),
    ],
    groups: [
      { id: 'stored', title: 'In the cells', glyph: null, rows: storedRows(bank) },
      {
        id: 'out',
        title: 'Out',
        glyph: null,
        rows: [...ratedRows(bank), ...bank.delivered.map((row, index) => deliveredRow(row, index, logs))],
      },
      { id: 'in', title: 'In', glyph: null, rows: bank.recharge.map(rechargeRow) },
    ].filter(({ rows }) => rows.length > 0),
    notes: notesOf(bank),
  });
}

function captionOf({ delivered, rated, stored }: PowerBankFigures): string {
  const best = delivered.find(({ ratio }) => !isMissing(ratio)) ?? null;
  const ratio = best?.ratio ?? rated.ratio;
  if (isMissing(ratio)) return 'What the cells hold and what comes out.';
  const held = isMissing(stored) ? '' : ` of ${(stored.nominal / JOULES_PER_WATT_HOUR).toFixed(0)} Wh in the cells`;
  return `${(ratio.nominal * 100).toFixed(0)} %${held} ${best === null ? 'is rated to come out' : 'came out'}${at(best === null ? rated.voltage : best.output)}. A ratio of energies.`;
}

function at(voltage: string | null): string {
  return voltage === null ? '' : ` at ${voltage}`;
}

function storedRows({ cells, cellEnergy, printed }: PowerBankFigures): readonly Row[] {
  const row = (id: string, what: string, known: Known): Row => ({ id, cells: [words(what), value(known), NONE, NONE, NONE] });
  return [
    ...(cells.length === 0 ? [] : [row('cells', `From the cells ${cells.join(', ')}`, cellEnergy)]),
    row('printed', 'As printed', printed),
  ];
}

function ratedRows({ rated }: PowerBankFigures): readonly Row[] {
  if (isMissing(rated.energy) && rated.energy.needs.includes('output capacity')) return [];
  return [{ id: 'rated', cells: [words(`Rated${at(rated.voltage)}`), value(rated.energy), value(rated.ratio), NONE, NONE] }];
}

function deliveredRow({ output, log, energy, ratio, ofRated }: DeliveredRow, index: number, logs: readonly LogSummary[]): Row {
  const from = log === null ? '' : `, log ${log}`;
  const what: Cell = { kind: 'text', text: `Delivered${at(output)}${from}`, ...(log === null ? {} : { link: logAddress(logs, log) }) };
  return {
    id: `${rowId(`delivered ${output ?? ''}`)}-${index + 1}`,
    cells: [what, value(energy), value(ratio), isMissing(ofRated) ? NONE : value(ofRated), NONE],
  };
}

function rechargeRow({ input, energy, time, roundTrip }: RechargeRow, index: number): Row {
  const there = isMissing(roundTrip) ? '' : `, ${(roundTrip.nominal * 100).toFixed(0)} % of it comes back`;
  return { id: `recharge-${index + 1}`, cells: [words(`Empty to full${at(input)}${there}`), value(energy), NONE, NONE, value(time)] };
}

function value(known: Known): Cell {
  return isMissing(known) ? { kind: 'missing', reason: known.reason } : { kind: 'value', value: known };
}

function notesOf(bank: PowerBankFigures): readonly string[] {
  return [
    'Charges at two voltages are never compared: 5,500 mAh at 5 V of 10,000 mAh at 3.7 V are 27.5 of 37 Wh, 74 %, and not 55 %.',
    travelWords(bank),
  ];
}
