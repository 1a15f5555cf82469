import type { EfficiencyRun, RunPoint } from '../derived/efficiency/efficiency-figures.ts';
import { isUnsustainedAt, nearestTo, unsustainedLoads } from '../derived/efficiency/run-mean.ts';
import { isMissing, type Known } from '../values/value.ts';
import { efficiencyAddress } from './bench-address.ts';
import { counted, detailColumn, numberColumn, plainGroup, textColumn, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'efficiency-means';
const TITLE = 'Efficiency by load';

export const efficiencyMeans: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

const LOADS = [0.1, 0.25, 0.5, 0.75, 1] as const;

function build({ derived }: TableInput): Table | null {
  const runs = derived.efficiency.runs.filter(({ points, meanSpan }) => points.length > 1 || meanSpan !== null);
  if (runs.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(runs.length, 'run')}; the mean is that of 25, 50, 75 and 100 % of the full load.`,
    columns: [
      textColumn('port', 'Port'),
      numberColumn('output', 'Output', 'V'),
      numberColumn('line', 'Line', 'V'),
      ...LOADS.map((share) => detailColumn(numberColumn(`at-${String(share * 100)}`, `${String(share * 100)} %`, null))),
      detailColumn(numberColumn('full', 'Output at full load', 'W')),
      detailColumn(numberColumn('loss', 'Loss at full load', 'W')),
      numberColumn('mean', 'Mean', '%'),
    ],
    groups: [plainGroup(runs.map(rowOf))],
    notes: ['Efficiency in per cent at the measured point nearest to each load, within three points of it, at a tenth within two.'],
  };
}

function rowOf(run: EfficiencyRun, index: number): Row {
  return {
    id: `run-${String(index + 1)}`,
    cells: [
      words(portWords(run), 'not given'),
      words(run.settings?.replaceAll(' V', '') ?? null),
      words(run.line === null ? null : shortNumber(run.line)),
      ...LOADS.map((share) => pointCell(run, share)),
      fullCell(run, (point) => point.output),
      fullCell(run, (point) => point.loss),
      meanCell(run),
    ],
  };
}

/** "C1"; "C1, not measured" where a system reports it or it stands in print. */
function portWords({ port, isReported }: EfficiencyRun): string | null {
  return isReported ? `${port ?? 'Output'}, not measured` : port;
}

/** The mean; which loads it lacks stands in the cells beside it. */
function meanCell({ mean, points }: EfficiencyRun): Cell {
  if (isMissing(mean))
    return { kind: 'missing', reason: unsustainedLoads(points).length > 0 ? 'not every load sustained' : 'not every load measured' };
  return { kind: 'value', value: mean, unit: '%', decimals: 1, ...(points[0] === undefined ? {} : efficiencyAddress(points[0].source)) };
}

function fullCell({ points }: EfficiencyRun, of: (point: RunPoint) => Known<'power'>): Cell {
  const full = nearestTo(points, 1);
  const reason = isUnsustainedAt(points, 1) ? 'full load not sustained' : 'full load not measured';
  return full === null
    ? { kind: 'missing', reason }
    : { kind: 'value', value: of(full), unit: 'W', decimals: 1, ...efficiencyAddress(full.source) };
}

function pointCell({ points }: EfficiencyRun, share: number): Cell {
  const point = nearestTo(points, share);
  if (point === null) return { kind: 'missing', reason: isUnsustainedAt(points, share) ? 'not sustained' : 'not measured' };
  const bound = point.source.efficiency?.quantity.written;
  // A bound has no number of its own: it stands as it was written.
  return 'missing' in point.efficiency && bound !== undefined
    ? { kind: 'text', text: bound, ...efficiencyAddress(point.source) }
    : { kind: 'value', value: point.efficiency, unit: '%', decimals: 1, ...efficiencyAddress(point.source) };
}

function shortNumber(value: number): string {
  return String(Number(value.toPrecision(4)));
}
