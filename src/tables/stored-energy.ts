import { numberColumn, plainGroup, textColumn, valueCell } from './cells.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'stored-energy';
const TITLE = 'Stored energy';

export const storedEnergy: TableDeclaration = { id: ID, title: TITLE, build };

function build({ derived }: TableInput): Table | null {
  const { references, capacitance, voltage, energy, bleed, timeToSafe } = derived.bulk;
  if (references.length === 0) return null;
  const rows = [
    row('capacitance', `Capacitance of ${references.join(', ')}`, capacitance, 'µF'),
    row('voltage', 'Voltage it is charged to', voltage, 'V'),
    row('energy', 'Stored energy', energy, 'J'),
    row('bleed', 'Known way down', bleed, isMissing(bleed) || bleed.nominal < 1e6 ? 'kΩ' : 'MΩ'),
    row('time', 'Time to 60 V through it', timeToSafe, isMissing(timeToSafe) ? 's' : waitingUnit(timeToSafe.nominal)),
  ];
  return {
    id: ID,
    title: TITLE,
    caption: 'What the bulk capacitor holds after unplugging, and how fast it can get rid of it through known parts.',
    columns: [textColumn('quantity', 'Quantity'), numberColumn('value', 'Value', null)],
    groups: [plainGroup(rows)],
    notes: [
      'It can stay charged after unplugging, and a bleed path can have failed: prove by meter that it is empty. No compliance verdict.',
    ],
  };
}

/** People wait in minutes: from 100 s on the time is given in them, from two hours on in hours. */
function waitingUnit(seconds: number): string {
  return seconds < 100 ? 's' : seconds < 7200 ? 'min' : 'h';
}

function row(id: string, name: string, value: Known, unit: string): Row {
  return { id, cells: [{ kind: 'text', text: name }, valueCell(value, unit)] };
}
