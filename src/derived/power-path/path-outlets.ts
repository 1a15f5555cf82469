import type { Entry, Port } from '../../entry/entry.ts';
import type { SetRow, ShareMatrix } from '../../sharing/share-matrix.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { offeredVoltage } from '../offered.ts';
import { feederOf, type TreeStage } from './path-tree.ts';
import type { PathOutlet } from './power-path.ts';

/** Where the power leaves, and a sentence that says which set of ports is drawn. */
export interface PathOutlets {
  readonly outlets: readonly PathOutlet[];
  readonly note: string | null;
}

/** The outlets with every port in use; with the fullest known set where that is not known; or the single port. */
export function pathOutlets(entry: Entry, tree: readonly TreeStage[], shares: ShareMatrix | null, ratedPower: Known<'power'>): PathOutlets {
  const ports = entry.ports.filter((port) => port.direction !== 'input');
  const [only, ...others] = ports;
  if (only === undefined) return { outlets: [unnamed(tree, ratedPower)], note: null };
  if (others.length === 0) return { outlets: [outlet([only], ratedPower, tree)], note: null };
  const row = shares === null ? null : drawnRow(shares);
  if (row === null) {
    const unknown = missing('no share of this port known', [`share of ${ports.map(({ id }) => id).join(', ')}`]);
    return { outlets: ports.map((port) => outlet([port], unknown, tree)), note: 'What the ports get together is not known.' };
  }
  return { outlets: [...inSet(row, ports, tree), ...outsideSet(row, ports, tree)], note: noteOf(row, ports.length) };
}

/** The known set of most ports, of equals the one of most power; the order of plugging that the author lists first. */
function drawnRow(shares: ShareMatrix): SetRow | null {
  const known = shares.rows.filter((row) => row.standing !== 'missing' && row.sum !== null);
  return known.reduce<SetRow | null>((best, row) => (best === null || isFuller(row, best) ? row : best), null);
}

function isFuller(row: SetRow, best: SetRow): boolean {
  if (row.ports.length !== best.ports.length) return row.ports.length > best.ports.length;
  return (row.sum?.nominal ?? 0) > (best.sum?.nominal ?? 0);
}

function inSet(row: SetRow, ports: readonly Port[], tree: readonly TreeStage[]): readonly PathOutlet[] {
  return row.shares
    .filter(({ port, pool }) => pool[0] === port)
    .map(({ pool, power }) =>
      outlet(
        ports.filter(({ id }) => pool.includes(id)),
        power,
        tree,
      ),
    );
}

function outsideSet(row: SetRow, ports: readonly Port[], tree: readonly TreeStage[]): readonly PathOutlet[] {
  return ports.filter(({ id }) => !row.ports.includes(id)).map((port) => outlet([port], missing(`not in the set ${row.key}`), tree));
}

function outlet(ports: readonly Port[], power: Known<'power'>, tree: readonly TreeStage[]): PathOutlet {
  const highest = ports.map(offeredVoltage).flatMap((volts) => (isMissing(volts) ? [] : [volts.nominal]));
  return {
    ports: ports.map(({ id }) => id),
    from: feederOf(ports[0]?.id ?? '', tree),
    power,
    note: highest.length === 0 ? null : `up to ${Math.max(...highest)} V`,
  };
}

/** An output that the entry does not describe as a port. */
function unnamed(tree: readonly TreeStage[], power: Known<'power'>): PathOutlet {
  return { ports: [], from: feederOf('', tree), power, note: null };
}

function noteOf(row: SetRow, count: number): string {
  if (row.ports.length < count) return `Drawn for ${row.key}: with more ports in use the shares are not known.`;
  return row.order === null ? 'All ports in use.' : `All ports in use, plugged in the order ${row.order.join(', ')}.`;
}
