import type { Entry, OnNewPlug } from '../entry/entry.ts';
import type { Value } from '../values/value.ts';
import { additionsOf, type Additions } from './added-device.ts';
import { totalPower } from './set-rows.ts';
import type { PortShare, SetRow, ShareMatrix } from './share-matrix.ts';

/** What one port gives by how many others are in use. null: no such set is known. */
export interface PortInCompany {
  readonly port: string;
  readonly alone: PortShare | null;
  /** The worst case with one more device, and the set in which it occurs. */
  readonly withOneMore: InSet | null;
  readonly inAll: PortShare | null;
  /** The worst case of all known sets. */
  readonly worst: InSet | null;
  /** Sets with this port that are not known; in those it may get less. */
  readonly unknown: number;
  /** What happens to it when another device is plugged in; "not tested" unless the author says. */
  readonly onNewPlug: OnNewPlug;
}

export interface InSet {
  readonly row: SetRow;
  readonly share: PortShare;
}

/** Where the whole rated power is to be had. */
export interface FullPower {
  readonly total: Value<'power'>;
  /** Ports that give all of it alone. */
  readonly ports: readonly string[];
  /** The smallest sets that give all of it together, where no port does alone; empty where none is known to. */
  readonly sets: readonly SetRow[];
}

/** What a reader asks of the port-share matrix. */
export interface ReaderAnswers {
  /** null where no total is given. */
  readonly fullPower: FullPower | null;
  readonly ports: readonly PortInCompany[];
  readonly additions: Additions;
}

/** Printed powers round: 9 V × 2.22 A is sold as 20 W. */
const ROUNDING = 0.01;

/** Answers to what readers ask first; unknown stays unknown, and no answer is filled in from another. */
export function readerAnswers(matrix: ShareMatrix, entry: Entry): ReaderAnswers {
  const total = totalPower(entry);
  return {
    fullPower: total === null ? null : fullPower(matrix, total),
    ports: matrix.ports.map((port) => portInCompany(port, matrix, entry)),
    additions: additionsOf(matrix),
  };
}

function fullPower(matrix: ShareMatrix, total: Value<'power'>): FullPower {
  const full = matrix.rows.filter((row) => row.sum !== null && row.sum.nominal >= total.nominal * (1 - ROUNDING));
  const alone = full.filter((row) => row.ports.length === 1).flatMap((row) => row.ports);
  const fewest = Math.min(...full.map((row) => row.ports.length));
  return { total, ports: alone, sets: alone.length > 0 ? [] : full.filter((row) => row.ports.length === fewest) };
}

function portInCompany(port: string, matrix: ShareMatrix, entry: Entry): PortInCompany {
  const rows = matrix.rows.filter((row) => row.ports.includes(port));
  const inSets = rows.flatMap((row): InSet[] => row.shares.filter((share) => share.port === port).map((share) => ({ row, share })));
  const ofSize = (size: number): InSet[] => inSets.filter(({ row }) => row.ports.length === size);
  return {
    port,
    alone: worstOf(ofSize(1))?.share ?? null,
    withOneMore: worstOf(ofSize(2)),
    inAll: worstOf(ofSize(matrix.ports.length))?.share ?? null,
    worst: worstOf(inSets),
    unknown: 2 ** (matrix.ports.length - 1) - new Set(inSets.map(({ row }) => row.key)).size,
    onNewPlug: entry.sharing?.onNewPlugAt[port] ?? entry.sharing?.onNewPlug ?? 'not tested',
  };
}

/** The lowest share; among equals one that is shared with others, as the port may get less of it still. */
function worstOf(found: readonly InSet[]): InSet | null {
  return found.reduce<InSet | null>((worst, next) => (worst === null || isWorse(next.share, worst.share) ? next : worst), null);
}

function isWorse(one: PortShare, other: PortShare): boolean {
  if (one.power.nominal !== other.power.nominal) return one.power.nominal < other.power.nominal;
  return one.pool.length > other.pool.length;
}
