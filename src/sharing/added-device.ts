import { inEntryOrder, setKey } from './port-sets.ts';
import type { PortShare, SetRow, ShareMatrix } from './share-matrix.ts';

/** What plugging in one more device does to one running port. */
export interface AddedDevice {
  readonly before: SetRow;
  /** Port that the new device goes into. */
  readonly added: string;
  readonly after: SetRow;
  /** The running port that is looked at. */
  readonly port: string;
  readonly from: PortShare;
  readonly to: PortShare;
  /** Watts lost, by the nominal shares; below nought where it gains. A pool after it is the most that the port can still get. */
  readonly fall: number;
}

/** Every single addition whose two sets are both known, and how many are not. */
export interface Additions {
  /** The largest falls first, then fewer ports in use, then the entry's order. */
  readonly steps: readonly AddedDevice[];
  /** Additions of one port to one set where either set is not known. */
  readonly unknown: number;
}

/** What each running port gets before and after one more device, for every set and every port that can be added to it. */
export function additionsOf(matrix: ShareMatrix): Additions {
  const known = matrix.rows.filter((row) => row.standing !== 'missing');
  const byKey = new Map<string, SetRow[]>();
  for (const row of known) byKey.set(row.key, [...(byKey.get(row.key) ?? []), row]);
  const steps = known.flatMap((before) =>
    matrix.ports.filter((port) => !before.ports.includes(port)).flatMap((added) => stepsFrom(before, added, matrix.ports, byKey)),
  );
  const answered = new Set(steps.map(({ before, added }) => `${before.key}\n${added}`));
  const all = matrix.ports.length * (2 ** (matrix.ports.length - 1) - 1);
  return { steps: steps.sort((one, other) => other.fall - one.fall), unknown: all - answered.size };
}

function stepsFrom(before: SetRow, added: string, ports: readonly string[], byKey: ReadonlyMap<string, readonly SetRow[]>): AddedDevice[] {
  return (byKey.get(setKey(inEntryOrder([...before.ports, added], ports))) ?? [])
    .filter((after) => follows(before, after, added))
    .flatMap((after) => before.shares.flatMap((from) => stepOf({ before, added, after }, from) ?? []));
}

/** Where plug order matters, the added port has to be the last one, and the others in the order that they had before. */
function follows(before: SetRow, after: SetRow, added: string): boolean {
  if (after.order === null) return true;
  if (after.order.at(-1) !== added) return false;
  return before.order === null || before.order.join('\n') === after.order.slice(0, -1).join('\n');
}

function stepOf(sets: Pick<AddedDevice, 'before' | 'added' | 'after'>, from: PortShare): AddedDevice | null {
  const to = sets.after.shares.find((share) => share.port === from.port);
  if (to === undefined) return null;
  const fall = Math.round((from.power.nominal - to.power.nominal) * 1e6) / 1e6;
  return { ...sets, port: from.port, from, to, fall };
}
