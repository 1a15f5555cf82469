import type { DataPath, Whereabouts } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import { type EfficiencyRunSource, NO_FIELDS, type PointFields } from './efficiency-fields.ts';
import type { EfficiencyPoint, EntryEvidence, Fact, PortLoad } from './entry.ts';
import { reportEmptyResult } from './empty-result.ts';
import { notSustainedWords } from './not-sustained.ts';
import { piecesBetween } from './pieces-between.ts';
import { readFact, type ReadingContext, readRatingFact, type Written } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import { reportWords } from './words-in-result.ts';
import { splitEvidence } from './split-evidence.ts';
import { counted } from '../units/counted.ts';

/** A run of several ports: their names, and the voltage that was set at each. */
export interface SharedRun {
  readonly path: DataPath;
  readonly evidence: EntryEvidence;
  readonly ports: readonly string[];
  readonly outputs: readonly (Fact<'voltage'> | null)[];
}

type Currents = readonly (Fact<'current'> | null)[];

/** Reads the points of a run that loads several ports at once: one amount a port with plus signs between, then what all of them share. */
export function readSharedPoints(context: ReadingContext, source: EfficiencyRunSource, run: SharedRun): readonly PointFields[] {
  const keyed = Object.entries(source.points ?? {}).map(([key, value]): PointFields => {
    const path = [...run.path, 'points', key];
    const { load, currents } = readLoad(context, key, atKey(path), run, path);
    const before = context.findings.length;
    const result = readResult(context, { text: value, path, evidence: run.evidence }, run, currents);
    // Currents that stand in the key are no result.
    const ofResult = currents.some((current) => current !== null) ? { ...result, loads: result.loads.filter(hasResult) } : result;
    reportEmptyResult(context, { text: value, path }, ofResult, before);
    return { ...NO_FIELDS, statistic: 'point', load, ...result, path };
  });
  return [...keyed, ...readSinglePoint(context, source, run)];
}

function hasResult({ measuredOutput, power }: PortLoad): boolean {
  return measuredOutput !== null || power !== null;
}

function readSinglePoint(context: ReadingContext, source: EfficiencyRunSource, run: SharedRun): readonly PointFields[] {
  if (source.efficiency === undefined && source.input === undefined) return [];
  const fact = <D extends Dimension>(key: 'input' | 'efficiency', dimension: D): Fact<D> | null => {
    const text = source[key];
    return text === undefined ? null : readFact(context, { text, path: [...run.path, key], evidence: run.evidence }, dimension);
  };
  const notSustained = notSustainedWords(source.efficiency);
  const loadPath = [...run.path, 'load'];
  const currentPath = [...run.path, 'current'];
  const { load, currents } =
    source.load === undefined ? { load: null, currents: none(run) } : readLoad(context, source.load, atValue(loadPath), run, loadPath);
  const drawn =
    source.current === undefined ? currents : readLoad(context, source.current, atValue(currentPath), run, currentPath).currents;
  const [input, efficiency] = [fact('input', 'power'), notSustained === null ? fact('efficiency', 'ratio') : null];
  return [{ ...NO_FIELDS, statistic: 'point', load, loads: portLoads(run, drawn), input, efficiency, notSustained, path: run.path }];
}

/** Ports with the voltage that was set at each, where nothing was measured at one of them. */
export function unmeasuredLoads(run: SharedRun): readonly PortLoad[] {
  return portLoads(run, none(run));
}

function none({ ports }: SharedRun): Currents {
  return ports.map(() => null);
}

function portLoads({ ports, outputs }: SharedRun, currents: Currents): readonly PortLoad[] {
  return ports.map((port, index) => ({
    port,
    output: outputs[index] ?? null,
    measuredOutput: null,
    current: currents[index] ?? null,
    power: null,
  }));
}

/** "50 %" of the loads that all of them have together, "65 W" in all, or the current of each: "2.5 A + 1.1 A". */
function readLoad(
  context: ReadingContext,
  text: string,
  where: Whereabouts,
  run: SharedRun,
  path: DataPath,
): { readonly load: EfficiencyPoint['load']; readonly currents: Currents } {
  const pieces = piecesBetween(text, /\+/u);
  // Remarks on a key are reported at the key, whatever reader makes them.
  const scratch: ReadingContext = { findings: [], gaps: context.gaps };
  const read = <D extends Dimension>(piece: string, dimension: D): Fact<D> | null =>
    readFact(scratch, { text: piece, path, evidence: run.evidence }, dimension);
  const whole = pieces.length === 1 ? (read(text, 'ratio') ?? read(text, 'power')) : null;
  if (whole !== null) return { load: asLoad(whole), currents: none(run) };
  const currents = pieces.map(({ piece }) => read(piece, 'current'));
  if (currents.every((current) => current !== null) && currents.length === run.ports.length) return { load: null, currents };
  const isCount = currents.every((current) => current !== null);
  const message = isCount
    ? `${run.ports.join(' + ')} are ${String(run.ports.length)} and "${text}" has ${counted(currents.length, 'current')}.`
    : `"${text}" is no load of ${run.ports.join(' + ')}.`;
  const advice = 'Write per cent or watts of all together, or one current a port: 50 %, 65 W, 2.5 A + 1.1 A.';
  context.findings.push(readingFinding(isCount ? 'loads-mismatch' : 'unreadable-value', where, message, { advice }));
  return { load: null, currents: none(run) };
}

function asLoad(fact: Fact<'ratio'> | Fact<'power'>): EfficiencyPoint['load'] {
  return isDimension(fact, 'ratio') ? fact : isDimension(fact, 'power') ? fact : null;
}

function isDimension<D extends Dimension>(fact: Fact, dimension: D): fact is Fact<D> {
  return fact.quantity.dimension === dimension;
}

/** "20.01 V 2.5 A + 8.97 V 1.1 A, 65.2 W 91.9 %": a piece for each port, then input power and efficiency; or these two alone; or "not sustained". */
function readResult(
  context: ReadingContext,
  written: Written,
  run: SharedRun,
  currents: Currents,
): Pick<PointFields, 'loads' | 'input' | 'efficiency' | 'notSustained'> {
  const notSustained = notSustainedWords(written.text);
  if (notSustained !== null) return { loads: portLoads(run, currents), input: null, efficiency: null, notSustained };
  const { text, evidence } = splitEvidence(written.text);
  const pieces = piecesBetween(text, /\+/u).map((each) => {
    const { rating } = readRatingFact(context, { ...written, text: each.piece, evidence: evidence ?? written.evidence }, null, each.start);
    reportWords(context, rating, written.path, each.start);
    return { ...each, left: [...(rating?.quantities ?? [])], isRead: rating !== null };
  });
  const known = { evidence: evidence ?? written.evidence, path: written.path };
  const take = <D extends Dimension>(left: Quantity[], dimension: D): Fact<D> | null => {
    const index = left.findIndex((candidate) => candidate.dimension === dimension);
    const [quantity] = index < 0 ? [] : left.splice(index, 1);
    return quantity === undefined ? null : { quantity: { ...quantity, dimension }, ...known };
  };
  const last = pieces.at(-1);
  const isShared =
    pieces.length === 1 && last !== undefined && last.left.every(({ dimension }) => dimension === 'power' || dimension === 'ratio');
  const loads = isShared
    ? portLoads(run, currents)
    : portLoads(run, currents).map((load, index): PortLoad => {
        const left = pieces[index]?.left ?? [];
        const measuredOutput = take(left, 'voltage');
        const current = take(left, 'current') ?? load.current;
        // Where a port has its amperes, watts are what went in; else they are what came out of it.
        return { ...load, measuredOutput, current, power: current === null ? take(left, 'power') : null };
      });
  const [input, efficiency] = last === undefined ? [null, null] : [take(last.left, 'power'), take(last.left, 'ratio')];
  if (!isShared && pieces.every(({ isRead }) => isRead)) reportLeft(context, written, run, pieces);
  return { loads, input, efficiency, notSustained };
}

/** Pieces without a port, and quantities without a place. */
function reportLeft(
  context: ReadingContext,
  { text, path }: Written,
  { ports }: SharedRun,
  pieces: readonly { readonly piece: string; readonly start: number; readonly left: readonly Quantity[] }[],
): void {
  if (pieces.length !== ports.length) {
    const message = `${ports.join(' + ')} are ${String(ports.length)} and "${text}" has ${counted(pieces.length, 'amount')}.`;
    context.findings.push(readingFinding('loads-mismatch', atValue(path), message));
    return;
  }
  for (const [index, { piece, start, left }] of pieces.entries()) {
    const [first] = left;
    if (first === undefined) continue;
    const message = `"${first.written}" has no place beside what else is written of ${ports[index] ?? ''}.`;
    const span = { start, end: start + piece.length };
    context.findings.push(readingFinding('loads-mismatch', atValue(path, span), message));
  }
}
