import type { ShareMatrix } from '../../sharing/share-matrix.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import { largest } from '../offered.ts';

/** Ports of one converter up to which every set of them is looked for; of more the set of all must be known. */
const MOST_PORTS = 4;

/**
 * Most power that several ports draw together when at least two of them are in use: the largest sum over the sets of them alone. Missing,
 * with the sets that would have to be known, where one is neither given nor implied.
 */
export function sharedPower(matrix: ShareMatrix | null, ports: readonly string[]): Known<'power'> {
  const wanted = (matrix?.ports ?? ports).filter((port) => ports.includes(port));
  const sets = wanted.length > MOST_PORTS ? [wanted] : setsOf(wanted).filter((set) => set.length > 1);
  const rows = (set: readonly string[]): readonly Known<'power'>[] =>
    (matrix?.rows ?? []).flatMap((row) =>
      row.ports.length === set.length && row.ports.every((port) => set.includes(port)) && row.sum !== null ? [row.sum] : [],
    );
  const unknown = sets.filter((set) => rows(set).length === 0);
  const found = largest(sets.flatMap(rows));
  if (unknown.length === 0 && found !== null) return found;
  const names = ports.join(' and ');
  return missing(
    `what ${names} draw together is not known`,
    unknown.map((set) => `share of ${set.join(' + ')}`),
  );
}

/** Every set of the ports, each in their order. */
function setsOf(ports: readonly string[]): readonly (readonly string[])[] {
  return ports.reduce<readonly (readonly string[])[]>((sets, port) => [...sets, ...sets.map((set) => [...set, port])], [[]]);
}
