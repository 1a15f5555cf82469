import { electricPower } from '../formulas/energy/electric-power.ts';
import { sumOfShares } from '../formulas/sharing/sum-of-shares.ts';
import { testLoadCurrent } from '../formulas/sharing/test-load-current.ts';
import { testLoadFactor } from '../formulas/sharing/test-load-factor.ts';
import type { Port } from '../entry/entry.ts';
import { outputPorts, totalPower } from '../sharing/set-rows.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { assume } from '../values/assume.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { writtenOrigin } from '../values/from-quantity.ts';
import { isMissing, type Known, type Source, type Value } from '../values/value.ts';
import { numberColumn, rowId, textColumn, valueCell } from './cells.ts';
import type { RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'shared-load';
const TITLE = 'Test loads of shared ports';

export const sharedLoad: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

const APPENDIX_Z: Source = {
  title: '10 CFR 430 subpart B appendix Z (2022)',
  section: 'adaptive supplies and several outputs',
  standing: 'read',
};

/** What a port is loaded with before the factor: volts and amperes of one nameplate setting. */
interface Rating {
  readonly port: string;
  readonly voltage: Value<'voltage'>;
  readonly current: Value<'current'>;
}

/** Currents at which a laboratory loads ports that share a total, at the highest and at the lowest voltage. */
function build({ entry }: TableInput): Table | null {
  const ports = outputPorts(entry);
  const total = totalPower(entry);
  if (ports.length < 2 || total === null) return null;
  const highest = ports.map((port) => fixedRating(port, 1));
  const lowest = ports.map((port) => (negotiates(port) ? lowestPowerDelivery(port) : fixedRating(port, -1)));
  const groups = [
    groupOf('highest', 'At the highest voltage', highest, total),
    groupOf('lowest', 'At the lowest voltage', lowest, total),
  ].filter((group) => group !== null);
  if (groups.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption:
      'Current of each port at full load when all are tested together: its own current times the factor D, so that the sum stays at the rated total.',
    columns: [
      textColumn('port', 'Port'),
      numberColumn('volts', 'Voltage', 'V'),
      numberColumn('amps', 'Own current', 'A'),
      numberColumn('load', 'Test current', 'A'),
    ],
    groups,
    notes: [
      'Rule: 10 CFR 430 subpart B appendix Z (2022). Own voltages and currents are those of the offers; the rule takes them from the nameplate. At the lowest voltage it counts 2 A for a USB PD port. The points of 75, 50 and 25 % are parts of these currents.',
      ...(ports.some((port) => port.offers.some((offer) => offer.kind === 'fixed' && offer.volts > 20))
        ? ['Its definition of USB PD ends at 20 V, so offers above that are left out here.']
        : []),
    ],
  };
}

/** The port's fixed offer with the most or the fewest volts, up to 20 V; null where none is listed. */
function fixedRating(port: Port, direction: 1 | -1): Rating | null {
  const fixed = port.offers.flatMap((offer) => ((offer.kind === 'fixed' || offer.kind === 'plain') && offer.volts <= 20 ? [offer] : []));
  const chosen = fixed.toSorted((one, other) => (other.volts - one.volts) * direction)[0];
  if (chosen === undefined) return null;
  const origin = writtenOrigin(port.evidence, chosen.written, chosen.path.join('.'));
  const value = <D extends 'voltage' | 'current'>(dimension: D, number: number): Value<D> => ({
    dimension,
    low: number,
    nominal: number,
    high: number,
    significant: 3,
    origin,
  });
  return { port: port.id, voltage: value('voltage', chosen.volts), current: value('current', chosen.amps) };
}

function negotiates(port: Port): boolean {
  return port.offers.some((offer) => offer.kind === 'fixed');
}

function lowestPowerDelivery(port: Port): Rating {
  const why = 'set by the test rule for a USB PD port at its lowest voltage';
  return {
    port: port.id,
    voltage: exact(assume('voltage', 5, 5, 5, why, APPENDIX_Z)),
    current: exact(assume('current', 2, 2, 2, why, APPENDIX_Z)),
  };
}

/** With the digits of an offer, so that the column lines up. */
function exact<D extends 'voltage' | 'current'>(value: Value<D>): Value<D> {
  return { ...value, significant: 3 };
}

function groupOf(id: string, title: string, ratings: readonly (Rating | null)[], total: Value<'power'>): RowGroup | null {
  const known = ratings.filter((rating) => rating !== null);
  if (known.length < ratings.length) return null;
  const powers = known.map(({ voltage, current }) => applyFormula(electricPower, { voltage, current }));
  const sum = foldFormula<'power'>(powers, (first, second) => applyFormula(sumOfShares, { first, second }), 'power of the ports');
  const factor = applyFormula(testLoadFactor, { total, sum });
  return {
    id,
    title: `${title}, D = ${isMissing(factor) ? 'not known' : factor.nominal.toFixed(2)}`,
    glyph: null,
    rows: known.map((rating) => rowFor(id, rating, factor)),
  };
}

function rowFor(group: string, { port, voltage, current }: Rating, factor: Known<'ratio'>): RowGroup['rows'][number] {
  return {
    id: rowId(`${group} ${port}`),
    cells: [
      { kind: 'text', text: port, mono: true },
      valueCell(voltage),
      valueCell(current),
      valueCell(applyFormula(testLoadCurrent, { factor, current })),
    ],
  };
}
