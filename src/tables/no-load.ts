import { factValue, isOf } from '../derived/fact-value.ts';
import type { Fact } from '../entry/entry.ts';
import { yearlyEnergy } from '../formulas/energy/yearly-energy.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { factCell, numberColumn, plainGroup, textColumn, valueCell, words } from './cells.ts';
import type { Cell, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'no-load';
const TITLE = 'Standby and light load';

export const noLoad: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

function build({ entry, derived }: TableInput): Table | null {
  const light = entry.measurements.filter(({ subject, conditions }) => subject === 'standby' && conditions['load'] !== undefined);
  const { noLoad: figures } = derived.efficiency;
  if (figures.length + light.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(figures.length + light.length, 'figure')}: power taken, and what that comes to when it stays in the socket all year.`,
    columns: [
      textColumn('load', 'Load'),
      numberColumn('line', 'Line', 'V'),
      numberColumn('power', 'Power', 'mW'),
      numberColumn('yearly', 'In a year', 'kWh'),
    ],
    groups: [
      plainGroup([
        ...figures.map(({ line, power, yearly }, index) => ({
          id: `none-${String(index + 1)}`,
          cells: [
            words('nothing plugged in'),
            words(line === null ? null : String(line)),
            valueCell(power, 'mW'),
            valueCell(yearly, 'kWh'),
          ],
        })),
        ...light.map(({ conditions, value }, index) => ({
          id: `light-${String(index + 1)}`,
          cells: [
            words(conditions['load'] ?? null),
            words(conditions['line']?.replace(/\s*V(?: AC)?$/u, '') ?? null),
            factCell(value, 'not given', 'mW'),
            yearlyCell(value),
          ],
        })),
      ]),
    ],
    notes: light.length === 0 ? [] : ['With a load, the year counts all that is taken, the load included. No limit here looks at it.'],
  };
}

/** What a light load comes to in a year: all that is taken from the mains, the load included. */
function yearlyCell(fact: Fact): Cell {
  if (!isOf(fact, 'power')) return { kind: 'missing', reason: 'no power' };
  return valueCell(applyFormula(yearlyEnergy, { power: factValue(fact) }), 'kWh');
}
