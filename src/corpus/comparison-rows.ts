import type { Derived } from '../derived/derived.ts';
import { factValue } from '../derived/fact-value.ts';
import { tellingEfficiency } from '../derived/telling-efficiency.ts';
import type { Entry } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { ComparisonGroup, ComparisonRow } from './comparison-row.ts';
import type { FactStress } from './sheet-facts.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { fittedParts } from '../derived/fitted-parts.ts';

/** Rows of one sheet, in the order of the page. */
export function comparisonRows(entry: Entry, derived: Derived, stress: readonly FactStress[]): readonly ComparisonRow[] {
  return [
    ...outputRows(entry, derived),
    ...sizeRows(entry, derived),
    ...pathRows(entry, derived),
    ...stress.map(stressRow),
    ...recordRows(entry, derived),
  ];
}

interface Wording {
  readonly id: string;
  readonly group: ComparisonGroup;
  readonly label: string;
}

function words({ id, group, label }: Wording, text: string | null, otherwise: string): ComparisonRow {
  return { id, group, label, text: text ?? `– ${otherwise}`, range: null, better: null, basis: '', mark: null };
}

function number(
  wording: Wording,
  known: Known,
  unit: string,
  perSi: number,
  better: ComparisonRow['better'] = null,
  basis = '',
): ComparisonRow {
  if (isMissing(known)) return words(wording, null, known.reason);
  const range = [known.low / perSi, known.nominal / perSi, known.high / perSi].map((end) => Number(end.toPrecision(9)));
  return {
    ...wording,
    text: formatInterval(known, known.dimension, unit).number,
    range: [range[0] ?? 0, range[1] ?? 0, range[2] ?? 0],
    better,
    basis,
    mark: null,
  };
}

function outputRows(entry: Entry, derived: Derived): readonly ComparisonRow[] {
  const group = 'Output';
  const outputs = entry.ports.filter((port) => port.direction !== 'input');
  const rows = derived.shares?.rows ?? [];
  const all = rows.find((row) => row.ports.length === outputs.length && row.standing !== 'missing');
  const most = Math.max(0, ...outputs.map((port) => port.power?.quantity.nominal ?? 0));
  return [
    number({ id: 'rated', group, label: 'Rated, W' }, derived.ratedPower, 'W', 1),
    words({ id: 'ports', group, label: 'Ports' }, portWords(outputs), 'no output described'),
    words({ id: 'one-port', group, label: 'One port, at most' }, most > 0 ? `${trimmed(most)} W` : null, 'not stated'),
    words(
      { id: 'all-ports', group, label: 'All ports in use' },
      all === undefined ? null : `${all.shares.map((share) => trimmed(share.power.nominal)).join(' + ')} W`,
      outputs.length < 2 ? 'one port' : 'not known',
    ),
    words(
      { id: 'unused', group, label: 'Left unused then' },
      all === undefined || all.unused === null ? null : `${trimmed(all.unused.nominal)} W`,
      outputs.length < 2 ? 'one port' : 'not known',
    ),
  ];
}

function sizeRows(entry: Entry, derived: Derived): readonly ComparisonRow[] {
  const group = 'Size';
  const { volume, density, specificPower, basis } = derived.size;
  const mass = entry.body.mass;
  return [
    words({ id: 'box', group, label: 'Box' }, entry.body.size?.size.written ?? null, 'not known, measure next'),
    number({ id: 'volume', group, label: 'Volume, cm³' }, volume, 'cm³', 1e-6, null, basis),
    mass === null
      ? words({ id: 'mass', group, label: 'Mass, g' }, null, 'not known, measure next')
      : number({ id: 'mass', group, label: 'Mass, g' }, factValue(mass), 'g', 1e-3, null, basis),
    number({ id: 'density', group, label: 'Density, W/cm³' }, density, 'W/cm³', 1e6, 'higher', basis),
    number({ id: 'specific-power', group, label: 'Density, W/kg' }, specificPower, 'W/kg', 1, 'higher', basis),
    words({ id: 'basis', group, label: 'Size is of' }, basis, 'not said'),
  ];
}

function pathRows(entry: Entry, derived: Derived): readonly ComparisonRow[] {
  const group = 'Power path';
  const telling = tellingEfficiency(entry, derived);
  const bulk = fittedParts(entry, 'bulk-capacitor').filter((part) => part.rating !== null);
  const controllers = fittedParts(entry, 'controller').map((part) => part.number ?? part.marking ?? 'not identified');
  return [
    words({ id: 'stages', group, label: 'Stages' }, derived.topology === '' ? null : derived.topology, 'not described'),
    words(
      { id: 'controllers', group, label: 'Controllers' },
      controllers.length === 0 ? null : [...new Set(controllers)].join(', '),
      'none identified',
    ),
    words(
      { id: 'bulk', group, label: 'Bulk capacitor' },
      bulk.length === 0 ? null : bulk.map((part) => part.rating?.written ?? '').join(', '),
      'none',
    ),
    telling === null
      ? words({ id: 'efficiency', group, label: 'Efficiency, %' }, null, 'not measured')
      : number({ id: 'efficiency', group, label: 'Efficiency, %' }, telling.value, '%', 0.01, 'higher', conditionsOf(telling.conditions)),
    standbyRow(entry),
    number({ id: 'stored-energy', group, label: 'Stored energy, J' }, derived.bulk.energy, 'J', 1),
  ];
}

/** Line, output and load of a measured point: "20 V 5 A at 230 V, connector". Two points are comparable only where all of it is equal. */
function conditionsOf({ statistic, line, output, current, load, place }: Entry['efficiency'][number]): string {
  const at = [output, current, load].flatMap((fact) => (fact === null ? [] : [fact.quantity.written]));
  const what = statistic === 'average' ? 'mean' : statistic === 'peak' ? 'highest' : '';
  return (
    [what, ...at, line === null ? 'line not said' : `at ${line.quantity.written}`].filter((piece) => piece !== '').join(' ') +
    `, ${place ?? 'place not said'}`
  );
}

function standbyRow(entry: Entry): ComparisonRow {
  const wording = { id: 'standby', group: 'Power path', label: 'Standby, mW' } as const;
  const points = entry.measurements.filter((point) => point.subject === 'standby' && point.value.quantity.dimension === 'power');
  const point = points.find((each) => each.conditions['line']?.startsWith('230') === true) ?? points[0];
  if (point === undefined) return words(wording, null, 'not measured');
  const line = point.conditions['line'];
  return number(wording, factValue(point.value), 'mW', 1e-3, 'lower', line === undefined ? '' : `at ${line}`);
}

function stressRow({ role, quantity, verdict, limit, ratio }: FactStress): ComparisonRow {
  const name = roleOf(role)?.name ?? role.replaceAll('-', ' ');
  const wording: Wording = {
    id: `stress-${role}-${quantity.replaceAll(' ', '-')}`,
    group: 'Ratings, stress over rating',
    label: `${sentenceCase(name)}, ${quantity}`,
  };
  if (ratio === null) return { ...words(wording, null, 'withheld'), mark: 'withheld' };
  const shown = ratio.nominal.toFixed(2);
  return {
    ...words(wording, limit === null || verdict === 'within' ? `${shown} ${verdict}` : `${shown} ${verdict} ${limit.toFixed(2)}`, ''),
    range: [ratio.low, ratio.nominal, ratio.high],
    better: 'lower',
    basis: quantity,
    mark: verdict,
  };
}

function recordRows(entry: Entry, derived: Derived): readonly ComparisonRow[] {
  const group = 'Record';
  const { kind, released, price } = entry.device;
  return [
    words({ id: 'kind', group, label: 'Kind' }, kind, 'not said'),
    words({ id: 'released', group, label: 'Came out' }, released, 'not known'),
    words({ id: 'price', group, label: 'Price' }, price === null ? null : `${price.amount} ${price.currency}`, 'not stated'),
    words(
      { id: 'issued', group, label: 'Sheet issued' },
      entry.published === null ? null : `${entry.published}, revision ${derived.revision}`,
      'not yet',
    ),
  ];
}

/** "3 × USB-C, 1 × USB-A". */
function portWords(ports: Entry['ports']): string | null {
  const counts = new Map<string, number>();
  for (const port of ports) counts.set(port.connector, (counts.get(port.connector) ?? 0) + 1);
  return counts.size === 0 ? null : [...counts].map(([connector, count]) => `${String(count)} × ${connector}`).join(', ');
}

/** A number as a list shows it: four digits at most. */
function trimmed(value: number): string {
  return String(Number(value.toPrecision(4)));
}
