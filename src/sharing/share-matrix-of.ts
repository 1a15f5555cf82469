import type { Entry } from '../entry/entry.ts';
import type { Value } from '../values/value.ts';
import { joinedGroups } from './alike-ports.ts';
import { allSets, bySizeThenPlace, MOST_PORTS } from './port-sets.ts';
import { assuredRow, givenRow, impliedRows, missingRow, outputPorts, rowFromLimit, swappedRows, totalPower } from './set-rows.ts';
import type { SetRow, ShareMatrix } from './share-matrix.ts';

/**
 * The port-share matrix of an entry: what each port gets in every set of output ports in use. Sets are known from the
 * author's rows, a set of one also from the port's own limit; alike ports and an assured policy imply others; the rest is
 * missing and listed as such. Null for a device without output ports.
 */
export function shareMatrix(entry: Entry): ShareMatrix | null {
  const ports = outputPorts(entry).map((port) => port.id);
  if (ports.length === 0) return null;
  const groups = joinedGroups(entry.sharing?.alike ?? [], ports);
  const rows = filledRows(entry, ports, groups);
  const capped = ports.length > MOST_PORTS;
  const listed = capped ? [] : allSets(ports).filter((set) => !rows.some((row) => sameSet(row, set)));
  const all = [...rows, ...listed.map(missingRow)].sort((one, other) => bySizeThenPlace(one.ports, other.ports, ports));
  return {
    ports,
    rows: all,
    counts: countsOf(rows, ports.length),
    capped,
    alike: groups,
    isAssured: entry.sharing?.policy === 'assured',
    falls: ports.map((port) => fallOf(port, rows)),
  };
}

function filledRows(entry: Entry, ports: readonly string[], groups: readonly (readonly string[])[]): SetRow[] {
  const total = totalPower(entry);
  const given = (entry.sharing?.allocations ?? []).map((allocation) => givenRow(allocation, ports, total));
  let rows = withRows([], [...given, ...given.flatMap((row) => swappedRows(row, groups, ports, total))]);
  rows = withRows(rows, impliedRows(rows, groups, ports, total));
  const limits = withRows(
    rows,
    outputPorts(entry).map((port) => rowFromLimit(port, total)),
  );
  rows = withRows(
    limits,
    impliedRows(
      limits.filter((row) => row.standing === 'known'),
      groups,
      ports,
      total,
    ),
  );
  if (entry.sharing?.policy !== 'assured' || ports.length > MOST_PORTS) return rows;
  const singles = new Map(rows.filter((row) => row.ports.length === 1).map((row) => [row.key, row]));
  return withRows(
    rows,
    allSets(ports).map((set) => assuredRow(set, singles, total)),
  );
}

/**
 * Adds rows whose set is not there yet. Rows of one batch may give one set several times only when each names its order of
 * plugging and no two name the same; otherwise the first stands (a check reports the other).
 */
function withRows(rows: readonly SetRow[], batch: readonly (SetRow | null)[]): SetRow[] {
  const settled = new Set(rows.map((row) => row.key));
  const added: SetRow[] = [];
  for (const row of batch) {
    if (row === null || settled.has(row.key)) continue;
    const rivals = added.filter((other) => other.key === row.key);
    if (rivals.every((other) => other.order !== null && row.order !== null && other.order.join() !== row.order.join())) added.push(row);
  }
  return [...rows, ...added];
}

function sameSet(row: SetRow, set: readonly string[]): boolean {
  return row.ports.length === set.length && row.ports.every((port, place) => port === set[place]);
}

function countsOf(rows: readonly SetRow[], ports: number): ShareMatrix['counts'] {
  const known = new Set(rows.filter((row) => row.standing === 'known').map((row) => row.key));
  const implied = new Set(rows.filter((row) => row.standing === 'implied' && !known.has(row.key)).map((row) => row.key));
  return { known: known.size, implied: implied.size, missing: 2 ** ports - 1 - known.size - implied.size };
}

function fallOf(port: string, rows: readonly SetRow[]): ShareMatrix['falls'][number] {
  const powers = rows.flatMap((row) => row.shares.filter((share) => share.port === port).map((share) => share.power));
  return { port, highest: extreme(powers, (one, other) => one > other), lowest: extreme(powers, (one, other) => one < other) };
}

function extreme(powers: readonly Value<'power'>[], beats: (one: number, other: number) => boolean): Value<'power'> | null {
  return powers.reduce<Value<'power'> | null>((best, power) => (best === null || beats(power.nominal, best.nominal) ? power : best), null);
}
