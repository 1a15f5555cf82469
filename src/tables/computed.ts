import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { restsOnAssumption } from '../values/trace.ts';
import { numberColumn, plainGroup, rowId, textColumn, valueCell } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'computed';
const TITLE = 'How it was computed';

export const computed: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Units in which the trade shows a dimension, where that is not the SI unit. */
const SHOWN_IN: Readonly<Record<string, string>> = {
  volume: 'cm³',
  mass: 'g',
  'power density': 'W/cm³',
  capacitance: 'µF',
  energy: 'J',
  length: 'mm',
};

function build({ derived }: TableInput): Table | null {
  const known = Object.entries(derived.named).filter((entry): entry is [string, Value] => !isMissing(entry[1]));
  if (known.length === 0) return null;
  const assumed = known.filter(([, value]) => restsOnAssumption(value)).length;
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(known.length, 'value')} that the text can quote by name, ${assumed} of them resting on an assumption.`,
    columns: [
      textColumn('name', 'Name'),
      numberColumn('value', 'Value', null),
      textColumn('how', 'How'),
      textColumn('assumed', 'Rests on an assumption'),
    ],
    groups: [plainGroup(known.map(rowOf))],
    notes: [],
  };
}

function rowOf([name, value]: [string, Value]): Row {
  const cells: Cell[] = [
    { kind: 'text', text: name, mono: true },
    valueCell(value, SHOWN_IN[value.dimension] ?? SI_UNITS[value.dimension]),
    howCell(value),
    { kind: 'text', text: restsOnAssumption(value) ? 'yes' : 'no' },
  ];
  return { id: rowId(name), cells };
}

function howCell({ origin }: Extract<Known, Value>): Cell {
  if (origin.evidence === 'assumed') return { kind: 'text', text: `assumed: ${origin.reason}` };
  if (origin.evidence !== 'computed') return { kind: 'text', text: `${origin.evidence}: ${origin.written}` };
  const inputs = Object.keys(origin.inputs).join(', ');
  return { kind: 'text', text: `${origin.formula.replaceAll('-', ' ')} from ${inputs}`, link: `/methods/${origin.formula}/` };
}
