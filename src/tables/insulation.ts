import type { Entry, InsulationPlace } from '../entry/entry.ts';
import type { DistanceRow, InsulationRow } from '../derived/insulation/insulation-row.ts';
import { isMissing, type Known } from '../values/value.ts';
import { factCell, numberColumn, rowId, textColumn, words } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'insulation';
const TITLE = 'Insulation';

export const insulation: TableDeclaration = { id: ID, title: TITLE, build };

function build({ entry, derived }: TableInput): Table | null {
  if (entry.insulation.length === 0) return null;
  const judged = derived.insulation;
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(entry.insulation.length, 'place')} measured beside the distances of IEC 60664-1. An indication, not a compliance verdict.`,
    columns: [
      textColumn('distance', 'Distance'),
      numberColumn('measured', 'Measured', null),
      numberColumn('asked', 'Asked', 'mm'),
      textColumn('verdict', 'Verdict'),
    ],
    groups: entry.insulation.map((place, index) => groupOf(place, judged[index])),
    notes: notesOf(entry, judged),
  };
}

/** A place with its distances; what is between, of which kind and with which sheet stands in its heading. */
function groupOf(place: InsulationPlace, row: InsulationRow | undefined): RowGroup {
  const kind = place.kind ?? row?.kind ?? 'kind not given';
  const sheet = place.sheet === null ? [] : [place.sheet ? 'with a sheet' : 'no sheet'];
  const title = [`${place.id}: ${place.between ?? 'between what is not given'}`, kind, ...sheet].join(', ');
  const id = rowId(place.id);
  const slot: Row[] =
    place.slot === null ? [] : [{ id: `${id}-slot`, cells: [words('Slot, width'), factCell(place.slot, '', 'mm'), NONE, NONE] }];
  return {
    id,
    title,
    glyph: null,
    rows: [
      {
        id: `${id}-air`,
        cells: [words('Through air'), factCell(place.clearance, 'not measured', 'mm'), required(row?.clearance), verdict(row?.clearance)],
      },
      {
        id: `${id}-surface`,
        cells: [
          words('Along the surface'),
          factCell(place.creepage, 'not measured', 'mm'),
          required(row?.creepage),
          verdict(row?.creepage),
        ],
      },
      ...slot,
      { id: `${id}-working`, cells: [words('Working voltage, rms'), working(row?.rms), NONE, NONE] },
    ],
  };
}

const NONE: Cell = { kind: 'none' };

function working(rms: Known<'voltage'> | undefined): Cell {
  if (rms === undefined) return { kind: 'missing', reason: 'not on the mains' };
  return isMissing(rms) ? { kind: 'missing', reason: rms.reason } : { kind: 'value', value: rms, unit: 'V', decimals: 0 };
}

function required(row: DistanceRow | undefined): Cell {
  if (row === undefined) return { kind: 'missing', reason: 'not on the mains' };
  if (isMissing(row.required)) return { kind: 'missing', reason: row.required.reason };
  return { kind: 'value', value: row.required, decimals: 2 };
}

function verdict(row: DistanceRow | undefined): Cell {
  if (row === undefined || row.verdict === 'withheld') return { kind: 'mark', mark: 'withheld', text: 'withheld' };
  return { kind: 'mark', mark: row.verdict === 'below' ? 'over' : row.verdict, text: row.verdict };
}

function notesOf(entry: Entry, judged: readonly InsulationRow[]): readonly string[] {
  if (judged.length === 0) return ['Not on the mains: no distances are asked here.'];
  const lines = [...new Set(judged.flatMap(({ notes }) => notes))].map((note) => {
    const places = judged.filter(({ notes }) => notes.includes(note)).map(({ place }) => place);
    return places.length === judged.length ? note : `${places.join(', ')}: ${note}`;
  });
  const impulses = [...new Set(judged.flatMap(({ impulse }) => (impulse === null ? [] : [`${impulse} V`])))];
  return [
    ...(impulses.length === 0 ? [] : [`Overvoltage category II: clearance for impulses of ${impulses.join(' and ')}.`]),
    ...lines,
    'Distances as tabulated in an open-source board-design program; above 30 kHz another part of the standard adds to them and is not covered. Measured by eye and caliper, which is no test.',
    ...(entry.insulation.some(({ kind }) => kind === 'supplementary') ? ['Supplementary insulation is judged as basic.'] : []),
  ];
}
