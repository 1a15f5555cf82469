import type { EfficiencyPoint } from '../entry/entry.ts';
import { SI_UNITS } from '../units/dimension.ts';
import { counted, factCell, numberColumn, textColumn, words } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'efficiency';
const TITLE = 'Efficiency as measured';

export const efficiency: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

function build({ entry }: TableInput): Table | null {
  if (entry.efficiency.length === 0) return null;
  const subjects = [...new Set(entry.efficiency.map(subjectOf))];
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(entry.efficiency.length, 'point')} with their conditions.`,
    columns: [
      numberColumn('line', 'Line', 'V'),
      numberColumn('output', 'Output', 'V'),
      numberColumn('load', 'Load', null),
      numberColumn('input', 'Input', 'W'),
      numberColumn('efficiency', 'Efficiency', '%'),
      textColumn('place', 'Measured at'),
    ],
    groups: subjects.map((subject) => groupOf(subject, entry.efficiency)),
    notes: [],
  };
}

function subjectOf(point: EfficiencyPoint): string {
  const device = point.port === null ? 'whole device' : point.port;
  return point.of === null ? device : `stage ${point.of}`;
}

function groupOf(subject: string, points: readonly EfficiencyPoint[]): RowGroup {
  const held = points.map((point, index) => ({ point, index })).filter(({ point }) => subjectOf(point) === subject);
  return {
    id: subject.replaceAll(/[^\p{L}\p{N}]+/gu, '-').toLowerCase(),
    title: subject,
    glyph: null,
    rows: held.map(({ point, index }) => rowOf(point, index)),
  };
}

function rowOf(point: EfficiencyPoint, index: number): Row {
  return {
    id: `point-${index + 1}`,
    cells: [
      factCell(point.line),
      factCell(point.measuredOutput ?? point.output),
      loadCell(point),
      factCell(point.input),
      factCell(point.efficiency),
      words(placeWords(point), 'place not given'),
    ],
  };
}

/** "cable end, 1 m AWG 20". */
function placeWords(point: EfficiencyPoint): string | null {
  const said = [point.place, point.cable?.written ?? null].filter((piece) => piece !== null);
  return said.length === 0 ? null : said.join(', ');
}

function loadCell(point: EfficiencyPoint): Cell {
  if (point.statistic !== 'point') return { kind: 'text', text: point.statistic };
  const load = point.load ?? point.current;
  if (load === null) return { kind: 'missing', reason: 'load not given' };
  const unit = load.quantity.dimension === 'ratio' ? '%' : SI_UNITS[load.quantity.dimension];
  return factCell(load, 'load not given', unit);
}
