import type { EfficiencyPoint, Entry, Fact } from '../../entry/entry.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { loadWords, measuredLoads, nearestLoad, type MeasuredLoad } from './measured-point.ts';
import { portPower } from '../output-power.ts';
import { upstream, type TreeStage } from './path-tree.ts';
import type { InputBasis, PathOutlet } from './power-path.ts';

/** Power at the input, how it is known, and the outlets with what was measured at them. */
export interface PathInput {
  readonly input: Known<'power'>;
  readonly basis: InputBasis;
  readonly outlets: readonly PathOutlet[];
  /** Power into a stage where it was measured for its ports alone. */
  readonly stageInputs: ReadonlyMap<string, Known<'power'>>;
  /** Line at which it was measured. */
  readonly line: Fact<'voltage'> | null;
  /** Points that were measured with these outlets at these powers; empty where the input is worked out. */
  readonly points: readonly EfficiencyPoint[];
  readonly note: string;
}

/** A load within this fraction of an outlet's power is a measurement of that outlet. */
const SAME_LOAD = 0.05;

/** Stages whose loss beside that of a converter is left out of account: a fuse, a filter, the pack's own resistance. */
const NEARLY_LOSSLESS: readonly string[] = ['dc-input', 'input-filter', 'battery-pack'];

/**
 * Power drawn with these outlets in use, by the best that was measured: this very load; each port alone, where nothing but a filter
 * is common to them; else the efficiency at the measured load nearest in power, which is then said.
 */
export function pathInput(entry: Entry, tree: readonly TreeStage[], outlets: readonly PathOutlet[]): PathInput {
  const loads = wholeLoads(entry, tree, outlets);
  const output = foldFormula(
    outlets.flatMap(({ power }) => (isMissing(power) ? [] : [power])),
    addPowers,
    'output power',
  );
  const none = { outlets, stageInputs: new Map<string, Known<'power'>>(), line: null, points: [] } as const;
  if (isMissing(output)) {
    return {
      ...none,
      input: missing('power at the ports not known', output.needs),
      basis: 'unknown',
      note: 'No power is known: the band has an even width.',
    };
  }
  const nearest = nearestLoad(loads, output.nominal);
  if (nearest === null) {
    return {
      ...none,
      input: missing('no efficiency measured', ['efficiency']),
      basis: 'unknown',
      note: 'No efficiency is measured, so the loss is not known.',
    };
  }
  return (
    asMeasured(outlets, loads) ??
    together(outlets, loads) ??
    oneAtATime(tree, outlets, loads) ??
    byEfficiency(none, output.nominal, output, nearest)
  );
}

/** Measured loads of the whole device, else of the only converter of a device whose other stages lose next to nothing. */
export function wholeLoads(entry: Entry, tree: readonly TreeStage[], outlets: readonly PathOutlet[]): readonly MeasuredLoad[] {
  const whole = measuredLoads(entry, null);
  if (whole.length > 0) return whole;
  const converters = tree.filter(({ stage }) => !NEARLY_LOSSLESS.includes(stage.kind));
  const [converter, ...others] = converters;
  const feedsAll = outlets.every(({ from }) => from === converter?.stage.id);
  return converter === undefined || others.length > 0 || !feedsAll ? [] : measuredLoads(entry, converter.stage.id);
}

function asMeasured(outlets: readonly PathOutlet[], loads: readonly MeasuredLoad[]): PathInput | null {
  const [only, ...others] = outlets.filter(({ power }) => !isMissing(power));
  const load = only === undefined || others.length > 0 ? null : loadOf(only, loads);
  if (only === undefined || load === null) return null;
  return {
    input: load.input,
    basis: 'measured',
    outlets: outlets.map((outlet) => (outlet === only ? { ...outlet, power: load.output, note: loadWords(load) ?? outlet.note } : outlet)),
    stageInputs: new Map(),
    line: load.point.line,
    points: [load.point],
    note: 'Input and output are measured.',
  };
}

/** The same ports at about the same powers, measured at once. */
function together(outlets: readonly PathOutlet[], loads: readonly MeasuredLoad[]): PathInput | null {
  const load = loads.find(
    ({ point }) => point.loads.length === outlets.length && outlets.every((outlet) => carriedAt(outlet, point) !== null),
  );
  if (load === undefined || outlets.length < 2) return null;
  return {
    input: load.input,
    basis: 'measured',
    outlets: outlets.map((outlet) => ({ ...outlet, power: carriedAt(outlet, load.point) ?? outlet.power })),
    stageInputs: new Map(),
    line: load.point.line,
    points: [load.point],
    note: 'Input and output are measured with these ports at once.',
  };
}

/** What the port of an outlet carried in a point, where that is about the power of the outlet. */
function carriedAt({ power, ports }: PathOutlet, { loads }: EfficiencyPoint): Known<'power'> | null {
  const load = ports.length === 1 ? loads.find(({ port }) => port === ports[0]) : undefined;
  const carried = load === undefined ? null : portPower(load);
  if (carried === null || isMissing(carried) || isMissing(power)) return null;
  return Math.abs(carried.nominal / power.nominal - 1) <= SAME_LOAD ? carried : null;
}

function oneAtATime(tree: readonly TreeStage[], outlets: readonly PathOutlet[], loads: readonly MeasuredLoad[]): PathInput | null {
  const paired = outlets.map((outlet) => ({ outlet, load: loadOf(outlet, loads) }));
  const found = paired.flatMap(({ outlet, load }) => (load === null ? [] : [{ outlet, load }]));
  const lines = new Set(found.map(({ load }) => load.point.line?.quantity.written ?? ''));
  if (found.length !== outlets.length || lines.size !== 1 || !areSeparate(tree, outlets)) return null;
  const stageInputs = new Map(found.flatMap(({ outlet, load }) => (outlet.from === null ? [] : [[outlet.from, load.input] as const])));
  const points = found.map(({ load }) => load.point);
  return {
    input: foldFormula(
      found.map(({ load }) => load.input),
      addPowers,
      'input power',
    ),
    basis: 'one port at a time',
    outlets: found.map(({ outlet, load }) => ({ ...outlet, power: load.output, note: loadWords(load) ?? outlet.note })),
    stageInputs,
    line: points[0]?.line ?? null,
    points,
    note: 'Input and output are measured one port at a time and added.',
  };
}

/** Whether each outlet has a converter of its own and only nearly lossless stages are common. */
function areSeparate(tree: readonly TreeStage[], outlets: readonly PathOutlet[]): boolean {
  const own = outlets.map(({ from }) => from);
  if (new Set(own).size !== own.length) return false;
  const before = own.flatMap((id) => upstream(id, tree).slice(1));
  return before.every((id) => NEARLY_LOSSLESS.includes(tree.find(({ stage }) => stage.id === id)?.stage.kind ?? ''));
}

function byEfficiency(
  none: Pick<PathInput, 'outlets' | 'stageInputs' | 'points'>,
  watts: number,
  output: Known<'power'>,
  { point, output: at, efficiency }: MeasuredLoad,
): PathInput {
  const percent = isMissing(efficiency) ? '' : `the ${(efficiency.nominal * 100).toFixed(1)} % `;
  const port = point.port === null ? '' : ` with ${point.port} alone`;
  const far = Math.abs(at.nominal / watts - 1) > SAME_LOAD;
  return {
    ...none,
    input: applyFormula(inputPower, { power: output, efficiency }),
    basis: 'by efficiency',
    line: point.line,
    note: `The input is worked out with ${percent}measured${port} at ${at.nominal.toFixed(1)} W${far ? ', the nearest load that was measured' : ''}; the loss is an estimate.`,
  };
}

function loadOf(outlet: PathOutlet, loads: readonly MeasuredLoad[]): MeasuredLoad | null {
  const { power, ports } = outlet;
  if (isMissing(power)) return null;
  const near = loads.filter(
    ({ point, output }) =>
      (point.port === null || (ports.length === 1 && point.port === ports[0])) && Math.abs(output.nominal / power.nominal - 1) <= SAME_LOAD,
  );
  return near[0] ?? null;
}

function addPowers(first: Known<'power'>, second: Known<'power'>): Known<'power'> {
  return applyFormula(sumOfPowers, { first, second });
}
