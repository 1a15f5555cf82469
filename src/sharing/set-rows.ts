import type { Allocation, Entry, Port } from '../entry/entry.ts';
import type { Value } from '../values/value.ts';
import { exchangesOf, swapsWithin, type Exchange } from './alike-ports.ts';
import { inEntryOrder, setKey } from './port-sets.ts';
import { powerValue, sumOfPowers, unusedPower } from './power-value.ts';
import type { PortShare, SetRow } from './share-matrix.ts';

/** Ports that give power, in the entry's order. */
export function outputPorts(entry: Entry): Port[] {
  return entry.ports.filter((port) => port.direction !== 'input');
}

/** Total output power that the sets are held against: the one of the sharing block, else the nameplate's. */
export function totalPower(entry: Entry): Value<'power'> | null {
  const fact = entry.sharing?.total ?? entry.nameplate.total;
  return fact === null ? null : powerValue(fact.quantity, fact.evidence, fact.path.join('.'), fact);
}

/** A row as the author gave it, or null where it names a port that gives no power or shares that leave a port out. */
export function givenRow(allocation: Allocation, ports: readonly string[], total: Value<'power'> | null): SetRow | null {
  const set = inEntryOrder(allocation.ports, ports);
  if (set.length === 0 || set.length !== new Set(allocation.ports).size) return null;
  const at = allocation.path.join('.');
  const shares = allocation.shares.flatMap((share) => {
    const pool = inEntryOrder(share.ports, ports);
    const power = powerValue(share.power, share.evidence ?? allocation.evidence, at, allocation.madeBy);
    return pool.map((port): PortShare => ({ port, power, pool }));
  });
  const ordered = set.map((port) => shares.filter((share) => share.port === port));
  if (ordered.some((found) => found.length !== 1)) return null;
  return rowOf(set, ordered.flat(), { standing: 'known', impliedBy: null, order: allocation.order, path: allocation.path }, total);
}

/** The set of one port, from the limit that the port itself states. */
export function rowFromLimit(port: Port, total: Value<'power'> | null): SetRow | null {
  if (port.power === null) return null;
  const power = powerValue(port.power.quantity, port.power.evidence, port.power.path.join('.'), port.power);
  const standing = { standing: 'known', impliedBy: null, order: null, path: port.power.path } as const;
  return rowOf([port.id], [{ port: port.id, power, pool: [port.id] }], standing, total);
}

/** The same shares with alike ports exchanged. */
export function impliedRow(given: SetRow, exchange: Exchange, total: Value<'power'> | null): SetRow {
  const exchanged = (port: string): string => exchange.standsFor.get(port) ?? port;
  const shares = given.shares.map((share) => ({
    port: exchanged(share.port),
    power: share.power,
    pool: inEntryOrder(share.pool.map(exchanged), exchange.ports),
  }));
  const ordered = exchange.ports.flatMap((port) => shares.filter((share) => share.port === port));
  const order = given.order?.map(exchanged) ?? null;
  return rowOf(exchange.ports, ordered, { standing: 'implied', impliedBy: given.key, order, path: null }, total);
}

/** Rows that alike ports add to the given ones. */
export function impliedRows(
  given: readonly SetRow[],
  groups: readonly (readonly string[])[],
  ports: readonly string[],
  total: Value<'power'> | null,
): SetRow[] {
  return given.flatMap((row) => exchangesOf(row.ports, groups, ports).map((exchange) => impliedRow(row, exchange, total)));
}

/** Rows by order of plugging that alike ports add to a row given for one order. */
export function swappedRows(
  given: SetRow | null,
  groups: readonly (readonly string[])[],
  ports: readonly string[],
  total: Value<'power'> | null,
): SetRow[] {
  if (given?.order == null) return [];
  return swapsWithin(given.ports, groups, ports).map((swap) => impliedRow(given, swap, total));
}

/** Under an assured policy a port never depends on the others: any set is its ports' single sets together. */
export function assuredRow(set: readonly string[], singles: ReadonlyMap<string, SetRow>, total: Value<'power'> | null): SetRow | null {
  const shares = set.flatMap((port) => singles.get(port)?.shares ?? []);
  if (shares.length !== set.length) return null;
  return rowOf(set, shares, { standing: 'implied', impliedBy: 'assured', order: null, path: null }, total);
}

/** A set of which nothing is known. */
export function missingRow(set: readonly string[]): SetRow {
  return {
    ports: set,
    key: setKey(set),
    order: null,
    standing: 'missing',
    impliedBy: null,
    shares: [],
    sum: null,
    unused: null,
    path: null,
  };
}

function rowOf(
  ports: readonly string[],
  shares: readonly PortShare[],
  how: Pick<SetRow, 'standing' | 'impliedBy' | 'order' | 'path'>,
  total: Value<'power'> | null,
): SetRow {
  const [first, ...rest] = poolsOf(shares);
  const sum = first === undefined ? null : sumOfPowers([first, ...rest]);
  return { ports, key: setKey(ports), ...how, shares, sum, unused: total === null || sum === null ? null : unusedPower(total, sum) };
}

/** The power of each pool, once. */
function poolsOf(shares: readonly PortShare[]): Value<'power'>[] {
  return [...new Map(shares.map((share) => [setKey(share.pool), share.power])).values()];
}
