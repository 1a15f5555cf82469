import { voltageRows, type VoltageRow } from '../derived/voltage-quality/voltage-rows.ts';
import { isMissing, type Known } from '../values/value.ts';
import { counted, detailColumn, numberColumn, plainGroup, rowId, textColumn, words } from './cells.ts';
import { withoutEmptyColumns } from './kept-columns.ts';
import type { Cell, JudgementMark, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'voltage-quality';
const TITLE = 'Voltage at the output';

export const voltageQuality: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

const MARKS = { meets: 'within', misses: 'over', undecided: 'straddles' } as const satisfies Readonly<Record<string, JudgementMark>>;

function build({ entry }: TableInput): Table | null {
  const rows = voltageRows(entry);
  if (rows.length === 0) return null;
  return withoutEmptyColumns({
    id: ID,
    title: TITLE,
    caption: captionOf(rows),
    columns: [
      textColumn('what', 'What'),
      detailColumn(numberColumn('set', 'Set', 'V')),
      numberColumn('lowest', 'Lowest', 'V'),
      numberColumn('highest', 'Highest', 'V'),
      detailColumn(numberColumn('from', 'Band from', 'V')),
      detailColumn(numberColumn('to', 'Band to', 'V')),
      textColumn('verdict', 'Verdict'),
      detailColumn(textColumn('place', 'At')),
      detailColumn(textColumn('conditions', 'Conditions')),
    ],
    groups: [plainGroup(rows.map(rowOf))],
    notes: notesOf(rows),
  });
}

function captionOf(rows: readonly VoltageRow[]): string {
  const judged = rows.filter(({ verdict }) => typeof verdict === 'string');
  if (judged.length === 0) return `${counted(rows.length, 'reading')}; none of them has a published band.`;
  const missed = judged.filter(({ verdict }) => verdict === 'misses').length;
  const open = judged.filter(({ verdict }) => verdict === 'undecided').length;
  const words = [missed === 0 ? null : `${missed} outside`, open === 0 ? null : `${open} undecided`].filter((each) => each !== null);
  const outcome = words.length === 0 ? 'all inside' : words.join(', ');
  return `${counted(judged.length, 'voltage')} against the band of ±5 %, ${outcome}. An indication, not a compliance verdict.`;
}

function rowOf(row: VoltageRow, index: number): Row {
  const { what, port, set, lowest, highest, band, place, offer, conditions } = row;
  const isRipple = what === 'ripple and noise';
  const name = port === null ? what : `${port} ${what}`;
  const unsaid = isRipple ? 'bandwidth not said' : null;
  return {
    id: `${rowId(name)}-${index + 1}`,
    cells: [
      words(name),
      value(set),
      isRipple ? { kind: 'none' } : value(lowest),
      value(highest, isRipple ? 'mV' : undefined),
      band === null ? { kind: 'none' } : edge(band.low),
      band === null ? { kind: 'none' } : edge(band.high),
      verdictCell(row),
      isRipple && place === null ? { kind: 'none' } : words([place, offer].filter((each) => each !== null).join(', '), 'place not said'),
      conditions === null && unsaid === null ? { kind: 'none' } : words(conditions, unsaid ?? undefined),
    ],
  };
}

function verdictCell({ verdict }: VoltageRow): Cell {
  return typeof verdict === 'string'
    ? { kind: 'mark', mark: MARKS[verdict], text: verdict }
    : { kind: 'text', text: `not judged: ${verdict.none}` };
}

function value(known: Known, unit?: string): Cell {
  if (isMissing(known)) return { kind: 'missing', reason: known.reason };
  return { kind: 'value', value: known, ...(unit === undefined ? {} : { unit }) };
}

/** An edge of the band is exact: 19.00 V. */
function edge(known: Known): Cell {
  const cell = value(known);
  return cell.kind === 'value' ? { ...cell, decimals: 2 } : cell;
}

function notesOf(rows: readonly VoltageRow[]): readonly string[] {
  const has = (what: VoltageRow['what']): boolean => rows.some((row) => row.what === what);
  return [
    'A source holds a fixed, PPS or AVS voltage within ±5 % at its own receptacle (USB PD, Table 7.23).',
    ...(rows.some(({ place, band }) => place === 'cable end' && band !== null)
      ? ['At the end of a cable 0.75 V less is still right: the cable may take that much.']
      : []),
    ...(has('on plug-in')
      ? ['For a moment the standard allows some 0.5 V beyond the band (from memory): a dip that stays inside that is undecided.']
      : []),
    ...(has('ripple and noise') ? ['Ripple is peak to peak; figures of different bandwidths do not compare.'] : []),
  ];
}
