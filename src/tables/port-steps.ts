import type { Entry } from '../entry/entry.ts';
import { powerValue } from '../sharing/power-value.ts';
import { numberColumn, plainGroup, rowId, textColumn, valueCell } from './cells.ts';
import type { Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'port-steps';
const TITLE = 'Steps of each port';

export const portSteps: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Power levels that ports were seen to take where it is not known which go together; each on a row of its own. */
function build({ entry }: TableInput): Table | null {
  const steps = Object.entries(entry.sharing?.steps ?? {}).filter(([, powers]) => powers.length > 0);
  if (steps.length === 0) return null;
  const count = steps.reduce((sum, [, powers]) => sum + powers.length, 0);
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(count, 'step')} of ${counted(steps.length, 'port')} known. Which of them go together is another matter: the sets above say what is known of that.`,
    columns: [textColumn('port', 'Port'), numberColumn('power', 'Step', 'W')],
    groups: [plainGroup(steps.flatMap(([port, powers]) => rowsFor(port, powers)))],
    notes: [],
  };
}

function rowsFor(port: string, powers: NonNullable<Entry['sharing']>['steps'][string]): Row[] {
  const falling = powers.toSorted((one, other) => other.nominal - one.nominal);
  return falling.map((power, index) => ({
    id: rowId(`${port} step ${index + 1}`),
    cells: [{ kind: 'text', text: port, mono: true }, valueCell(powerValue(power, 'measured', `sharing.steps.${port}`))],
  }));
}
