import type { Derived } from '../derived/derived.ts';
import { isReported } from '../derived/efficiency/efficiency-runs.ts';
import type { EfficiencyPoint, Fact } from '../entry/entry.ts';
import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Known } from '../values/value.ts';
import { benchAddressOf, efficiencyAddress } from './bench-address.ts';
import { counted, detailColumn, factCell, numberColumn, textColumn, words } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'efficiency';
const TITLE = 'Efficiency as measured';

export const efficiency: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

function build({ entry, derived }: TableInput): Table | null {
  if (entry.efficiency.length === 0) return null;
  const subjects = [...new Set(entry.efficiency.map(subjectOf))];
  const known = workedOut(derived);
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(entry.efficiency.length, 'point')} with their conditions.`,
    columns: [
      numberColumn('load', 'Load', null),
      detailColumn(numberColumn('line', 'Line', 'V')),
      detailColumn(numberColumn('output', 'Output', 'V')),
      numberColumn('input', 'Input', 'W'),
      numberColumn('efficiency', 'Efficiency', '%'),
      detailColumn(textColumn('place', 'Measured at')),
    ],
    groups: subjects.map((subject) => groupOf(subject, entry.efficiency, known)),
    notes: ['An efficiency that is not written is worked out from both sides.'],
  };
}

/** Efficiency by the place of its point, as far as it could be worked out. */
type WorkedOut = ReadonlyMap<string, Known<'ratio'>>;

function workedOut({ efficiency: { runs } }: Derived): WorkedOut {
  return new Map(runs.flatMap(({ points }) => points.map(({ source, efficiency: known }) => [source.path.join('.'), known] as const)));
}

function subjectOf(point: EfficiencyPoint): string {
  const device = point.port === null ? 'whole device' : point.port;
  return point.of === null ? device : `stage ${point.of}`;
}

function groupOf(subject: string, points: readonly EfficiencyPoint[], known: WorkedOut): RowGroup {
  const held = points.map((point, index) => ({ point, index })).filter(({ point }) => subjectOf(point) === subject);
  return {
    id: subject.replaceAll(/[^\p{L}\p{N}]+/gu, '-').toLowerCase(),
    title: subject,
    glyph: null,
    rows: held.map(({ point, index }) => rowOf(point, index, known)),
  };
}

function rowOf(point: EfficiencyPoint, index: number, known: WorkedOut): Row {
  return {
    id: `point-${index + 1}`,
    cells: [
      loadCell(point),
      factCell(point.line),
      outputCell(point),
      factCell(point.input),
      efficiencyCell(point, known),
      words(placeWords(point), 'place not given'),
    ],
  };
}

/** As written where it is written; a bound has no other form. */
function efficiencyCell(point: EfficiencyPoint, known: WorkedOut): Cell {
  if (point.notSustained !== null) return { kind: 'text', text: point.notSustained };
  const value = point.efficiency === null ? known.get(point.path.join('.')) : undefined;
  return value === undefined || isMissing(value)
    ? factCell(point.efficiency)
    : { kind: 'value', value, decimals: 1, ...efficiencyAddress(point) };
}

/** The voltage under load, else the one that was set; of several ports each. */
function outputCell({ loads, measuredOutput, output }: EfficiencyPoint): Cell {
  if (loads.length === 0) return factCell(measuredOutput ?? output);
  const volts = loads.map((load) => load.measuredOutput ?? load.output);
  return linked(words(joined(volts)?.replaceAll(/\s*V\b/gu, '') ?? null), volts);
}

/** Words that lead to what measured them. */
function linked(cell: Cell, facts: readonly (Fact | null)[]): Cell {
  const link = benchAddressOf(facts);
  return cell.kind === 'text' && link !== null ? { ...cell, link } : cell;
}

/** "cable end, 1 m AWG 20". */
function placeWords(point: EfficiencyPoint): string | null {
  const standing = isReported(point) ? 'reported or printed, not measured' : null;
  const said = [point.place, point.cable?.written ?? null, standing].filter((piece) => piece !== null);
  return said.length === 0 ? null : said.join(', ');
}

/** "2.5 A + 1.1 A"; null where one of them is not known. */
function joined(facts: readonly (Fact | null)[]): string | null {
  return facts.some((fact) => fact === null) ? null : facts.map((fact) => fact?.quantity.written ?? '').join(' + ');
}

function loadCell(point: EfficiencyPoint): Cell {
  if (point.statistic !== 'point') return { kind: 'text', text: point.statistic };
  const drawn = point.loads.map(({ current, power }) => current ?? power);
  const shared = drawn.length === 0 ? null : joined(drawn);
  if (shared !== null) return linked({ kind: 'text', text: shared }, drawn);
  const load = point.load ?? point.current;
  if (load === null) return { kind: 'missing', reason: 'load not given' };
  const unit = load.quantity.dimension === 'ratio' ? '%' : SI_UNITS[load.quantity.dimension];
  return factCell(load, 'load not given', unit);
}
