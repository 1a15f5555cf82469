import type { DataPath } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { EfficiencyPoint, EntryEvidence, Fact } from './entry.ts';
import { type EfficiencyRunSource, NO_FIELDS, type PointFields } from './efficiency-fields.ts';
import { reportEmptyResult } from './empty-result.ts';
import { notSustainedWords } from './not-sustained.ts';
import { readCable } from './read-cable.ts';
import { readPortList } from './read-port-list.ts';
import { readSetOutputs } from './read-set-outputs.ts';
import { readSharedPoints, type SharedRun, unmeasuredLoads } from './read-shared-points.ts';
import { listed, readAnyFact, readFact, type ReadingContext, readRatingFact, written } from './reading-context.ts';
import { reportWords } from './words-in-result.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';

type Run = EfficiencyRunSource;

/** How a load is named: share of the rated current, amperes, watts, or the resistance that was connected. */
const LOAD_DIMENSIONS = ['ratio', 'current', 'power', 'resistance'] as const;

/** Reads efficiency runs into single points, each with the conditions of its run. `ports` are the names that the entry has. */
export function readEfficiency(
  context: ReadingContext,
  source: Run | readonly Run[] | undefined,
  ports: readonly string[],
): readonly EfficiencyPoint[] {
  return listed<Run>(context, source, ['measurements', 'efficiency']).flatMap(({ item, path }) => readRun(context, item, path, ports));
}

function readRun(context: ReadingContext, run: Run, path: DataPath, ports: readonly string[]): readonly EfficiencyPoint[] {
  const evidence = run.evidence ?? 'measured';
  const named = readPortList(context, run.port, [...path, 'port'], ports);
  const outputs = readSetOutputs(context, named, written(run.output, [...path, 'output'], evidence));
  const shared = { path, evidence, ports: named, outputs: outputs.each };
  const conditions = {
    of: run.of ?? null,
    port: named.length === 0 ? null : named.join(' + '),
    line: readLine(context, run.line, [...path, 'line'], evidence),
    output: outputs.common,
    place: run.at ?? null,
    cable: readCable(run.cable, [...path, 'cable']),
    method: run.method ?? null,
    instrument: run.instrument ?? null,
    ambient: readFact(context, written(run.ambient, [...path, 'ambient'], evidence), 'temperature'),
    after: readFact(context, written(run.after, [...path, 'after'], evidence), 'time'),
    note: run.note ?? null,
  };
  const points = [
    ...(named.length > 1
      ? readSharedPoints(context, run, shared)
      : [...keyedPoints(context, run, path, evidence), ...singlePoint(context, run, path, evidence)]),
    ...statistics(context, run, shared),
  ];
  if (points.length === 0) {
    const message = 'A run of efficiency gives no efficiency.';
    context.findings.push(
      readingFinding('missing-field', atValue(path), message, { advice: 'Add points, or load with efficiency or input.' }),
    );
  }
  return points.map((point) => ({ ...conditions, ...point }));
}

/** A line with its frequency: "230 V 50 Hz"; the voltage is what counts. */
function readLine(context: ReadingContext, text: string | undefined, path: DataPath, evidence: EntryEvidence): Fact<'voltage'> | null {
  if (text === undefined) return null;
  const withoutFrequency = text.replace(/[\s,/]+\d+(?:[.,]\d+)?\s*Hz\b/iu, (piece) => ' '.repeat(piece.length)).trimEnd();
  return readFact(context, { text: withoutFrequency, path, evidence }, 'voltage');
}

function keyedPoints(context: ReadingContext, run: Run, path: DataPath, evidence: EntryEvidence): readonly PointFields[] {
  return Object.entries(run.points ?? {}).map(([key, value]) => {
    const at = [...path, 'points', key];
    const load = readKeyedLoad(context, key, at, evidence);
    const before = context.findings.length;
    const result = readResult(context, value, at, evidence);
    reportEmptyResult(context, { text: value, path: at }, result, before);
    const current =
      load?.quantity.dimension === 'current' ? { ...load, quantity: { ...load.quantity, dimension: 'current' as const } } : null;
    return {
      ...NO_FIELDS,
      ...result,
      statistic: 'point',
      load: current === null ? notCurrent(load) : null,
      current: result.current ?? current,
      path: at,
    };
  });
}

/** A load in a key: remarks are reported at the key. */
function readKeyedLoad(
  context: ReadingContext,
  key: string,
  path: DataPath,
  evidence: EntryEvidence,
): Fact<(typeof LOAD_DIMENSIONS)[number]> | null {
  const scratch: ReadingContext = { findings: [], gaps: context.gaps };
  const load = readAnyFact(scratch, { text: key, path, evidence }, LOAD_DIMENSIONS);
  if (load === null) {
    context.findings.push(
      readingFinding('unreadable-value', atKey(path), `"${key}" is no load.`, {
        advice: 'Write per cent, amperes, watts or ohms: 25 %, 0.75 A, 15 W, 10 Ω.',
      }),
    );
  }
  return load;
}

function notCurrent(load: Fact<(typeof LOAD_DIMENSIONS)[number]> | null): EfficiencyPoint['load'] {
  if (load === null) return null;
  const { dimension } = load.quantity;
  return dimension === 'current' ? null : narrowed(load, dimension);
}

function narrowed(load: Fact, dimension: 'ratio' | 'power' | 'resistance'): EfficiencyPoint['load'] {
  if (dimension === 'ratio') return { ...load, quantity: { ...load.quantity, dimension } };
  if (dimension === 'power') return { ...load, quantity: { ...load.quantity, dimension } };
  return { ...load, quantity: { ...load.quantity, dimension } };
}

/** "79.5 %", "17.7 W", "4.998 V 17.7 W", "4.998 V 3 A 17.7 W 84.7 %", "not sustained". */
function readResult(context: ReadingContext, text: string, path: DataPath, evidence: EntryEvidence): Partial<PointFields> {
  const notSustained = notSustainedWords(text);
  if (notSustained !== null) return { notSustained };
  const single = (['ratio', 'power'] as const).find((dimension) => readQuantity(text, dimension).ok);
  if (single === 'ratio') return { efficiency: readFact(context, { text, path, evidence }, 'ratio') };
  if (single === 'power') return { input: readFact(context, { text, path, evidence }, 'power') };
  const { rating, evidence: known } = readRatingFact(context, { text, path, evidence }, null);
  reportWords(context, rating, path);
  const left = [...(rating?.quantities ?? [])];
  const take = <D extends Dimension>(dimension: D): Fact<D> | null => {
    const index = left.findIndex((candidate) => candidate.dimension === dimension);
    const [quantity] = index < 0 ? [] : left.splice(index, 1);
    return quantity === undefined ? null : { quantity: { ...quantity, dimension }, evidence: known, path };
  };
  const result = { efficiency: take('ratio'), input: take('power'), measuredOutput: take('voltage'), current: take('current') };
  const [surplus] = left;
  if (surplus !== undefined) {
    const message = `"${surplus.written}" has no place beside what else is written of this point.`;
    context.findings.push(readingFinding('loads-mismatch', atValue(path), message));
  }
  return result;
}

function singlePoint(context: ReadingContext, run: Run, path: DataPath, evidence: EntryEvidence): readonly PointFields[] {
  if (run.efficiency === undefined && run.input === undefined) return [];
  const load = readAnyFact(context, written(run.load, [...path, 'load'], evidence), LOAD_DIMENSIONS);
  const current = readFact(context, written(run.current, [...path, 'current'], evidence), 'current');
  const asCurrent =
    load?.quantity.dimension === 'current' ? { ...load, quantity: { ...load.quantity, dimension: 'current' as const } } : null;
  const notSustained = notSustainedWords(run.efficiency);
  const stated = notSustained === null ? run.efficiency : undefined;
  return [
    {
      ...NO_FIELDS,
      statistic: 'point',
      load: notCurrent(load),
      current: current ?? asCurrent,
      input: readFact(context, written(run.input, [...path, 'input'], evidence), 'power'),
      efficiency: readFact(context, written(stated, [...path, 'efficiency'], evidence), 'ratio'),
      notSustained,
      path,
    },
  ];
}

function statistics(context: ReadingContext, run: Run, shared: SharedRun): readonly PointFields[] {
  const { path, evidence, ports } = shared;
  const loads = ports.length > 1 ? unmeasuredLoads(shared) : [];
  return (['average', 'peak'] as const).flatMap((statistic): readonly PointFields[] => {
    const text = run[statistic];
    if (text === undefined) return [];
    const at = [...path, statistic];
    return [{ ...NO_FIELDS, statistic, loads, efficiency: readFact(context, { text, path: at, evidence }, 'ratio'), path: at }];
  });
}
