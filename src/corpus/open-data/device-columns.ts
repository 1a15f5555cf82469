import type { CorpusSheet } from '../corpus-sheet.ts';
import type { DataColumn } from './data-column.ts';

/** Columns of `devices.csv`: one row a teardown. */
export const DEVICE_COLUMNS: readonly DataColumn<CorpusSheet>[] = [
  { head: 'id', type: 'string', description: 'Address of the teardown, /teardowns/<id>/; stays', value: (row) => row.slug },
  { head: 'sheet number', type: 'string', description: 'Number that the bench gave', value: (row) => row.number },
  {
    head: 'revision',
    type: 'string',
    description: 'A for the first issue, then a letter for each day of corrections',
    value: (row) => row.revision,
  },
  { head: 'maker', type: 'string', description: 'Label on the device', value: (row) => row.maker },
  { head: 'name', type: 'string', description: 'Name it is sold under', value: (row) => row.name },
  { head: 'kind', type: 'string', description: 'Wall charger, desktop charger, car charger, power bank …', value: (row) => row.kind },
  { head: 'published', type: 'date', description: 'Day of issue', value: (row) => (row.published === '' ? null : row.published) },
  { head: 'topology', type: 'string', description: 'Stages in the order power flows', value: (row) => row.topology },
  { head: 'family', type: 'string', description: 'Topology family, /topologies/<family>/', value: (row) => row.family },
  { head: 'isolated', type: 'boolean', description: 'Whether a stage crosses an insulation barrier', value: (row) => row.traits.isolated },
  { head: 'ports', type: 'string', description: 'Output ports, the strongest first', value: (row) => row.traits.ports.join('; ') },
  figure('rated power', 'W', 'Rated output power', (row) => [row.ratedWatts, row.traits.evidence.ratedPower]),
  evidence('rated power', (row) => [row.ratedWatts, row.traits.evidence.ratedPower]),
  { head: 'basis', type: 'string', description: 'What is inside the volume: cased, board', value: (row) => row.traits.basis },
  {
    head: 'length (mm)',
    type: 'number',
    description: 'Longest stated edge first as written; a cylinder by the box around it',
    value: (row) => row.outline?.[0] ?? null,
  },
  { head: 'width (mm)', type: 'number', description: 'Second edge', value: (row) => row.outline?.[1] ?? null },
  { head: 'height (mm)', type: 'number', description: 'Third edge', value: (row) => row.outline?.[2] ?? null },
  figure('mass', 'g', 'Mass', (row) => [row.traits.massGrams, row.traits.evidence.mass]),
  evidence('mass', (row) => [row.traits.massGrams, row.traits.evidence.mass]),
  figure('power density', 'W/cm³', 'Rated power by volume', (row) => [row.densityWPerCm3, row.traits.evidence.density]),
  evidence('power density', (row) => [row.densityWPerCm3, row.traits.evidence.density]),
  figure('specific power', 'W/kg', 'Rated power by mass', (row) => [row.traits.wattsPerKilogram, row.traits.evidence.specificPower]),
  evidence('specific power', (row) => [row.traits.wattsPerKilogram, row.traits.evidence.specificPower]),
  figure('efficiency', '1', 'Efficiency that stands for the device', (row) => [
    row.traits.efficiency?.ratio ?? null,
    row.traits.evidence.efficiency,
  ]),
  evidence('efficiency', (row) => [row.traits.efficiency?.ratio ?? null, row.traits.evidence.efficiency]),
  {
    head: 'efficiency statistic',
    type: 'string',
    description: 'point, average or peak',
    value: (row) => row.traits.efficiency?.statistic ?? null,
  },
  {
    head: 'efficiency line',
    type: 'string',
    description: 'Supply voltage as written',
    value: (row) => row.traits.efficiency?.line ?? null,
  },
  figure('bulk capacitance', 'µF', 'Capacitance behind the rectifier', (row) => [row.bulkMicrofarads, row.traits.evidence.bulk]),
  evidence('bulk capacitance', (row) => [row.bulkMicrofarads, row.traits.evidence.bulk]),
  count('parts identified', 'Identified pieces', (row) => row.partsIdentified),
  count('stresses within', 'Stresses within their derating limit; an indication, not a compliance verdict', (row) => row.within),
  count('stresses straddling', 'Stresses whose interval holds the limit', (row) => row.straddles),
  count('stresses over', 'Stresses over the limit', (row) => row.over),
  count('stresses withheld', 'Stresses that could not be judged', (row) => row.withheld),
];

type FigureOf = (row: CorpusSheet) => readonly [number | null, string | null];

function figure(name: string, unit: string, description: string, of: FigureOf): DataColumn<CorpusSheet> {
  return {
    head: unit === '1' ? name : `${name} (${unit})`,
    type: 'number',
    description,
    value: (row) => {
      const [number] = of(row);
      return number === null ? null : Number(number.toPrecision(6));
    },
  };
}

function evidence(name: string, of: FigureOf): DataColumn<CorpusSheet> {
  return {
    head: `${name} evidence`,
    type: 'string',
    description: 'printed, marked, measured, datasheet, assumed or computed; "computed, rests on an assumption" where one went in',
    value: (row) => {
      const [number, words] = of(row);
      return number === null ? null : words;
    },
  };
}

function count(head: string, description: string, value: (row: CorpusSheet) => number): DataColumn<CorpusSheet> {
  return { head, type: 'integer', description, value };
}
