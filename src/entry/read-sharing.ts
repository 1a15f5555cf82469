import type { DataPath, Whereabouts } from '../diagnostics/finding.ts';
import type { Quantity } from '../units/quantity.ts';
import type { OnNewPlug, Sharing } from './entry.ts';
import { findPort, portAdvice } from './port-names.ts';
import { readAllocations } from './read-allocations.ts';
import { listed, readFact, type ReadingContext, readPlain, written } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

type SharingSource = NonNullable<EntrySource['sharing']>;

/** Reads how power is divided between ports; null where the entry says nothing of it. */
export function readSharing(context: ReadingContext, source: EntrySource['sharing'], ports: readonly string[]): Sharing | null {
  if (source === undefined) return null;
  const evidence = source.evidence ?? 'measured';
  return {
    total: readFact(context, written(source.total, ['sharing', 'total'], source.evidence ?? 'printed'), 'power'),
    policy: source.policy ?? null,
    alike: readAlike(context, source, ports),
    minimum: readMinimum(context, source, ports),
    allocations: readAllocations(context, source.allocations, ports, evidence),
    steps: readSteps(context, source, ports),
    onNewPlug: typeof source['on new plug'] === 'string' ? source['on new plug'] : null,
    onNewPlugAt: readNewPlugByPort(context, source, ports),
    priority: source.priority ?? null,
    note: source.note ?? null,
    path: ['sharing'],
  };
}

/** The port that a text names; reported where there is none. */
function knownPort(context: ReadingContext, ports: readonly string[], name: string, where: Whereabouts): string | null {
  const port = findPort(ports, name);
  if (port === null) {
    const advice = portAdvice(ports, name);
    context.findings.push(readingFinding('unknown-port', where, `There is no port "${name}".`, { advice, subject: name }));
  }
  return port;
}

function readAlike(context: ReadingContext, source: SharingSource, ports: readonly string[]): readonly (readonly string[])[] {
  return listed<readonly string[]>(context, source.alike, ['sharing', 'alike']).map(({ item, path }) =>
    listed<string>(context, item, path).flatMap((name) => knownPort(context, ports, name.item, atValue(name.path)) ?? []),
  );
}

function readMinimum(
  context: ReadingContext,
  source: SharingSource,
  ports: readonly string[],
): Readonly<Record<string, Quantity<'power'>>> {
  const path = ['sharing', 'minimum'];
  if (source.minimum === undefined) return {};
  if (typeof source.minimum === 'string') {
    const power = readPlain(context, splitEvidence(source.minimum).text, 'power', path);
    return power === null ? {} : Object.fromEntries(ports.map((port) => [port, power]));
  }
  return byPort(context, source.minimum, path, ports, (text, at) => readPlain(context, splitEvidence(text).text, 'power', at));
}

function readSteps(
  context: ReadingContext,
  source: SharingSource,
  ports: readonly string[],
): Readonly<Record<string, readonly Quantity<'power'>[]>> {
  return byPort(context, source.steps ?? {}, ['sharing', 'steps'], ports, (value, path) =>
    listed<string>(context, value, path).flatMap(({ item, path: at }) =>
      [...item.matchAll(/[^,]+/gu)].flatMap(
        (piece) => readPlain(context, piece[0].trim(), 'power', at, leadOf(piece[0], piece.index)) ?? [],
      ),
    ),
  );
}

function leadOf(piece: string, index: number): number {
  return index + (piece.length - piece.trimStart().length);
}

function readNewPlugByPort(context: ReadingContext, source: SharingSource, ports: readonly string[]): Readonly<Record<string, OnNewPlug>> {
  const answer = source['on new plug'];
  if (answer === undefined || typeof answer === 'string') return {};
  return byPort(context, answer, ['sharing', 'on new plug'], ports, (word) => word);
}

/** Reads a group whose keys are ports. */
function byPort<S, T>(
  context: ReadingContext,
  source: Readonly<Record<string, S>>,
  path: DataPath,
  ports: readonly string[],
  read: (value: S, path: DataPath) => T | null,
): Readonly<Record<string, T>> {
  const found: [string, T][] = [];
  for (const [name, value] of Object.entries(source)) {
    const at = [...path, name];
    const port = knownPort(context, ports, name, atKey(at));
    const result = read(value, at);
    if (port !== null && result !== null) found.push([port, result]);
  }
  return Object.fromEntries(found);
}
