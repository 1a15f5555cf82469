import type { Entry, MeasuredPoint } from '../entry/entry.ts';
import type { DischargeRow, LimitVerdict, MainsFigures, TouchRow, TouchVoltage } from '../derived/mains/mains-figures.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { detailColumn, numberColumn, textColumn, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'mains-side';
const TITLE = 'At the mains';

/** Words of a rule that asks nothing of this device. */
export const NOT_ASKED = 'not asked here';
/** Words of a rule that is written for other equipment. */
export const FOR_INFORMATION = 'for information';

export const mainsSide: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry, derived }: TableInput): Table | null {
  const { mains } = derived;
  if (mains === null || entry.parts.length === 0) return null;
  const groups = [
    { id: 'inrush', title: 'Inrush into the empty bulk capacitor', glyph: null, rows: [inrushRow(mains, measured(entry, 'inrush'))] },
    { id: 'pins', title: 'Charge on the plug pins', glyph: null, rows: mains.discharge.map(dischargeRow) },
    { id: 'touch', title: 'Current through somebody who touches the output', glyph: null, rows: touchRows(mains) },
  ];
  return {
    id: ID,
    title: TITLE,
    caption: 'What happens on plugging in, on pulling out and on touching, each rule by its name. An indication, not a compliance verdict.',
    columns: [
      textColumn('what', 'Rule or quantity'),
      numberColumn('limit', 'Limit', null),
      numberColumn('computed', 'Computed', null),
      textColumn('verdict', 'Verdict'),
      detailColumn(numberColumn('time', 'Time to the limit', 's')),
      detailColumn(textColumn('known', 'Limit known from')),
    ],
    groups: groups.filter(({ rows }) => rows.length > 0),
    notes: notesOf(entry, mains),
  };
}

function inrushRow(mains: MainsFigures, seen: readonly string[]): Row {
  const said = seen.length === 0 ? 'not measured' : `measured ${seen.join(', ')}`;
  return {
    id: 'inrush',
    cells: [
      words('crest of the highest line through the cold inrush limiter alone'),
      { kind: 'none' },
      value(mains.inrush, 'A'),
      words(said),
      { kind: 'none' },
      { kind: 'none' },
    ],
  };
}

function dischargeRow(row: DischargeRow): Row {
  return {
    id: row.rule,
    cells: [words(row.name), value(row.limit, 'V'), value(row.left, 'V'), dischargeVerdict(row), value(row.time, 's'), words(row.standing)],
  };
}

/** A rule for other equipment is there for information, in words and never with a mark. */
function dischargeVerdict({ verdict, writtenFor }: DischargeRow): Cell {
  return writtenFor === 'chargers' ? mark(verdict) : { kind: 'text', text: `${FOR_INFORMATION}: for ${writtenFor}` };
}

function touchRows({ touch, yCurrent }: MainsFigures): readonly Row[] {
  return isMissing(yCurrent) && yCurrent.needs.includes('Y capacitor') ? [] : touch.map((row) => touchRow(row, yCurrent));
}

function touchRow(row: TouchRow, current: Known<'current'>): Row {
  return {
    id: row.limit,
    cells: [words(row.name), value(row.most, 'mA'), value(current, 'mA'), mark(row.verdict), { kind: 'none' }, words(row.standing)],
  };
}

function notesOf(entry: Entry, mains: MainsFigures): readonly string[] {
  const pins = measured(entry, 'pin voltage');
  const touched = measured(entry, 'touch current');
  return [
    ...(mains.discharge.length === 0 ? ['No X capacitor among the parts.'] : []),
    ...(mains.hasDischargeIc
      ? ['A discharge IC leads the charge away once the mains is gone; resistors beside it are counted here, it is not.']
      : []),
    ...(pins.length === 0 ? [] : [`Measured on the pins: ${pins.join(', ')}.`]),
    ...(touched.length === 0 ? [] : [`Measured touch current: ${touched.join(', ')}.`]),
    ...mains.touchVoltages.flatMap(touchVoltageNote),
    ...(mains.discharge.length === 0
      ? []
      : [
          'IEC 62368-1 is the rule for chargers today and IEC 60950-1 was the one before; IEC 60335-1 is for household appliances and IEC 60204-1 for machines.',
        ]),
    'The inrush leaves out the resistance of mains, fuse, bridge and choke and so is the most there can be; a warm limiter lets more through.',
    'The touch current is that of the Y capacitors at the highest line and frequency. A tingle, or tens of volts into an open meter, is this current and no fault by itself; earthed limits hold only for a device with an earth pin.',
  ];
}

/** A reading on an open meter beside what the divider of meter and Y capacitor gives, and the current that counts. */
function touchVoltageNote({ written, line, meter, through, divider, passed }: TouchVoltage): readonly string[] {
  if (isMissing(meter) || isMissing(through)) return [];
  const read = `Between output and earth a meter of ${quantityWords(meter)} showed ${written}${line === null ? '' : ` at ${line}`} and let ${quantityWords(through)} through.`;
  if (isMissing(divider) || isMissing(passed)) return [`${read} The current behind it is not known without the Y capacitor.`];
  return [
    `${read} Meter and Y capacitor are a divider, which can show up to ${quantityWords(divider)}, about half of it behind a bridge; what counts is the current, at most ${quantityWords(passed)} here. Such a reading is taken with the case closed and by qualified people; it is no touch-current test.`,
  ];
}

function quantityWords(value: Value): string {
  const { number, unit } = formatInterval(
    { low: value.nominal, nominal: value.nominal, high: value.nominal, significant: 2 },
    value.dimension,
  );
  return `${number} ${unit}`;
}

function measured(entry: Entry, subject: MeasuredPoint['subject']): readonly string[] {
  return entry.measurements
    .filter((point) => point.subject === subject)
    .map(({ value: { quantity }, conditions }) => {
      const at = conditions['line'] ?? conditions['after'];
      return at === undefined ? quantity.written : `${quantity.written} at ${at}`;
    });
}

function value(known: Known, unit: string): Cell {
  return isMissing(known) ? { kind: 'missing', reason: known.reason } : { kind: 'value', value: known, unit };
}

/** Mark and word of a limit; a rule that asks nothing here says so. */
export function mark(verdict: LimitVerdict): Cell {
  return verdict === 'not asked' ? { kind: 'text', text: NOT_ASKED } : { kind: 'mark', mark: verdict, text: verdict };
}
