import type { DataPath, Finding, Whereabouts } from '../diagnostics/finding.ts';
import type { Span } from '../units/quantity.ts';
import { type AllocationKey, readAllocationKey } from './allocation-key.ts';
import type { Allocation, EntryEvidence } from './entry.ts';
import { findPort, portAdvice } from './port-names.ts';
import { type KnownPools, readShares } from './read-shares.ts';
import { listed, namesOf, type ReadingContext } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

type AllocationsSource = NonNullable<NonNullable<EntrySource['sharing']>['allocations']>;
type RowFields = Exclude<Extract<AllocationsSource, Record<string, unknown>>[string], string | readonly unknown[]>;

/** One line of allocations before its ports and powers are read. */
interface Row {
  readonly key: string;
  readonly fields: RowFields;
  /** Place of the line, and of the text with its powers. */
  readonly path: DataPath;
  readonly sharesPath: DataPath;
  /** Where the key stands: as a key, or as the first part of a printed line; `shift` is where the powers start there. */
  readonly keyIn: 'key' | 'value';
  readonly shift: number;
}

/** A line whose ports are known. */
interface PlacedRow {
  readonly row: Row;
  readonly groups: readonly (readonly string[])[];
  readonly ordered: boolean;
}

/** Reads every allocation of an entry; a line that can't be read is reported and left out. */
export function readAllocations(
  context: ReadingContext,
  source: AllocationsSource | undefined,
  ports: readonly string[],
  evidence: EntryEvidence,
): readonly Allocation[] {
  const placed = rowsOf(context, source).flatMap((row) => placeRow(context, row, ports));
  const pools = knownPools(placed);
  return placed.flatMap((row) => {
    const allocation = readRow(context, row, pools, ports, evidence);
    return allocation === null ? [] : [allocation];
  });
}

function rowsOf(context: ReadingContext, source: AllocationsSource | undefined): readonly Row[] {
  const at = ['sharing', 'allocations'];
  if (source === undefined) return [];
  if (Array.isArray(source)) return listed<string>(context, source, at).flatMap(({ item, path }) => printedRow(context, item, path));
  return Object.entries(source).flatMap(([key, value]) =>
    listed<string | RowFields>(context, value, [...at, key]).map(({ item, path }): Row => {
      const short = typeof item === 'string';
      return { key, fields: short ? { shares: item } : item, path, sharesPath: short ? path : [...path, 'shares'], keyIn: 'key', shift: 0 };
    }),
  );
}

/** A line as labels print it: "USB-C1+USB-A: 45W+18W Max". */
function printedRow(context: ReadingContext, line: string, path: DataPath): readonly Row[] {
  const colon = line.indexOf(':');
  if (colon > 0) {
    const shares = line.slice(colon + 1);
    const lead = shares.length - shares.trimStart().length;
    return [
      { key: line.slice(0, colon), fields: { shares: shares.trim() }, path, sharesPath: path, keyIn: 'value', shift: colon + 1 + lead },
    ];
  }
  context.findings.push(
    readingFinding('unreadable-value', atValue(path), `"${line}" has no colon between ports and powers.`, {
      advice: 'Write C1 + C2: 50 W + 50 W.',
    }),
  );
  return [];
}

function placeRow(context: ReadingContext, row: Row, ports: readonly string[]): readonly PlacedRow[] {
  const reading = readAllocationKey(row.key);
  if (!reading.ok) {
    context.findings.push(
      readingFinding('shares-mismatch', keyPlace(row, reading.span), reading.message, {
        advice: 'Write C1 + C2, or C1 + (C2 + A1) for ports that share.',
      }),
    );
    return [];
  }
  return reading.keys.flatMap((key) => {
    const groups = groupsOf(context, row, key, ports);
    return groups === null ? [] : [{ row, groups, ordered: key.ordered }];
  });
}

function keyPlace(row: Row, span: Span): Whereabouts {
  if (row.keyIn === 'value') return atValue(row.path, span);
  return atKey(['sharing', 'allocations', row.key], span);
}

function groupsOf(context: ReadingContext, row: Row, key: AllocationKey, ports: readonly string[]): readonly (readonly string[])[] | null {
  const seen = new Set<string>();
  const faults: Finding[] = [];
  const groups = key.groups.map((group) =>
    group.flatMap(({ word, span }) => {
      const port = findPort(ports, word);
      if (port !== null && !seen.has(port)) {
        seen.add(port);
        return [port];
      }
      faults.push(
        port === null
          ? unknownPort(row, word, span, ports)
          : readingFinding('shares-mismatch', keyPlace(row, span), `${port} stands twice in one set.`),
      );
      return [];
    }),
  );
  context.findings.push(...faults);
  return faults.length === 0 ? groups : null;
}

function unknownPort(row: Row, word: string, span: Span, ports: readonly string[]): Finding {
  const advice = portAdvice(ports, word);
  return readingFinding('unknown-port', keyPlace(row, span), `There is no port "${word}".`, { advice, subject: word });
}

/** Pools that some line names beyond doubt: one power for several ports, or a bracket. */
function knownPools(rows: readonly PlacedRow[]): KnownPools {
  const pools = new Map<string, readonly string[]>();
  for (const { row, groups } of rows) {
    const single = groups.length > 1 && !/\+/u.test(row.fields.shares) && !/\beach\b/iu.test(row.fields.shares);
    for (const pool of single ? [groups.flat()] : groups.filter((group) => group.length > 1)) pools.set([...pool].sort().join('+'), pool);
  }
  return [...pools.values()];
}

function readRow(
  context: ReadingContext,
  placed: PlacedRow,
  pools: KnownPools,
  ports: readonly string[],
  inherited: EntryEvidence,
): Allocation | null {
  const { row, groups, ordered } = placed;
  const split = splitEvidence(row.fields.shares);
  const shares = readShares(context, groups, split.text, { path: row.sharesPath, shift: row.shift }, pools);
  if (shares === null) return null;
  const beside = (field: 'asked' | 'advertised'): Allocation['asked'] => {
    const text = row.fields[field];
    return text === undefined ? null : readShares(context, groups, text, { path: [...row.path, field], shift: 0 }, pools);
  };
  return {
    ports: groups.flat(),
    shares,
    evidence: split.evidence ?? row.fields.evidence ?? inherited,
    order: ordered ? groups.flat() : readOrder(context, row, groups.flat(), ports),
    asked: beside('asked'),
    advertised: beside('advertised'),
    note: row.fields.note ?? null,
    path: row.path,
  };
}

function readOrder(context: ReadingContext, row: Row, set: readonly string[], ports: readonly string[]): readonly string[] | null {
  const path = [...row.path, 'order'];
  const names = namesOf(context, row.fields.order, path);
  if (names.length === 0) return null;
  const order = names.flatMap(({ name }) => findPort(ports, name) ?? []);
  if (order.length === set.length && set.every((port) => order.includes(port))) return order;
  context.findings.push(
    readingFinding(
      'shares-mismatch',
      atValue(path),
      `The order names ${names.map(({ name }) => name).join(', ')}, the set is ${set.join(', ')}.`,
      { advice: 'Name each port of the set once, first plugged first.' },
    ),
  );
  return null;
}
