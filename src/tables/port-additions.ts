import { powerDrop } from '../formulas/sharing/power-drop.ts';
import { additionsOf, type AddedDevice } from '../sharing/added-device.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { numberColumn, plainGroup, rowId, textColumn, valueCell } from './cells.ts';
import type { Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'port-additions';
const TITLE = 'When one more device is plugged in';

export const portAdditions: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ derived }: TableInput): Table | null {
  const matrix = derived.shares;
  if (matrix === null || matrix.ports.length < 2) return null;
  const { steps, unknown } = additionsOf(matrix);
  if (steps.length === 0) return null;
  const falls = steps.filter(({ fall }) => fall > 0);
  const kept = steps.length - falls.length;
  const decimals = falls.some(({ fall }) => Math.abs(fall - Math.round(fall)) > 0.04) ? 1 : 0;
  return {
    id: ID,
    title: TITLE,
    caption: captionOf(falls.length, kept),
    columns: [
      textColumn('in-use', 'In use'),
      textColumn('added', 'Added'),
      textColumn('port', 'Falls'),
      numberColumn('before', 'Before', 'W'),
      numberColumn('after', 'After', 'W'),
      numberColumn('fall', 'By', 'W'),
    ],
    groups: [plainGroup(falls.map((step) => rowFor(step, decimals)))],
    notes: [
      ...(falls.some(({ to }) => to.pool.length > 1)
        ? ['Where the power after it is shared, the fall is the least possible: the port may get less still.']
        : []),
      ...(unknown > 0 ? [`${counted(unknown, 'addition')} not known: one of the two sets was not measured.`] : []),
    ],
  };
}

function captionOf(falls: number, kept: number): string {
  if (falls === 0) return `No running port falls, in ${counted(kept, 'known case')}.`;
  const others = kept === 0 ? 'in no known case does a port keep its power' : `in ${counted(kept, 'case')} the port keeps its power`;
  return `${counted(falls, 'fall')} of a running port when one device is added to a set, the largest first; ${others}.`;
}

function rowFor(step: AddedDevice, decimals: number): Row {
  const { before, added, after, port, from, to } = step;
  const others = to.pool.filter((other) => other !== port);
  const order = after.order === null ? '' : `, ${after.order.join(' then ')}`;
  return {
    id: rowId(`${before.order?.join(' then ') ?? before.key} plus ${added} ${port}${order}`),
    cells: [
      { kind: 'text', text: `${before.key}${order}`, mono: true },
      { kind: 'text', text: added, mono: true },
      { kind: 'text', text: port, mono: true },
      valueCell(from.power),
      { kind: 'value', value: to.power, ...(others.length === 0 ? {} : { suffix: `shared with ${others.join(', ')}` }) },
      { kind: 'value', value: applyFormula(powerDrop, { before: from.power, after: to.power }), decimals },
    ],
  };
}
