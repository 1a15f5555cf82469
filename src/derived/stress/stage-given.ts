import type { Entry, Port, Stage } from '../../entry/entry.ts';
import { bulkMinimumVoltageExact } from '../../formulas/bulk/bulk-minimum-voltage-exact.ts';
import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { parallelResistance } from '../../formulas/resistor/parallel-resistance.ts';
import { seriesResistance } from '../../formulas/resistor/series-resistance.ts';
import type { ShareMatrix } from '../../sharing/share-matrix.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { stageOf } from '../../stages/index.ts';
import type { OutputPoint, ParameterEdge, Span, StageGiven } from '../../stages/models/stage-model.ts';
import type { Dimension } from '../../units/dimension.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { briefTrace } from '../../values/brief-trace.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { BulkFigures, InputFigures } from '../derived.ts';
import { assumed, edgeValue, factValue, isOf } from '../fact-value.ts';
import { fittedParts, perPiece, pieces } from '../fitted-parts.ts';
import { fullLoadEfficiency } from '../full-load-efficiency.ts';
import { largest } from '../offered.ts';
import { offeredPoints } from '../offered-points.ts';
import { outputVoltage, reachOf } from '../output-voltage.ts';
import { measuredOf, ratingOf } from '../part-rating.ts';
import { jointPoints } from '../shared-ports/joint-points.ts';
import { sharedPower } from '../shared-ports/shared-power.ts';
import { hasPfc, PFC_KINDS } from '../stage-kinds.ts';
import { asOneOutput, type LoadPoint, powerOfAll } from '../load-point.ts';
import { INPUT_AT } from '../supply-lines.ts';
import { coreResetOf } from '../windings/core-reset-of.ts';
import { turnsRatioOf } from '../windings/stated-ratios.ts';
import { feedingVoltage, isFedByPack, isFedBySupply, outputSpan } from './feeding-voltage.ts';
import { inputForPower } from './input-for-power.ts';

/** What was already worked out for the whole device. */
export interface DeviceFigures {
  readonly power: Known<'power'>;
  readonly input: InputFigures;
  readonly bulk: BulkFigures;
  /** Who gets what with which ports in use; null for a device without output ports. */
  readonly shares: ShareMatrix | null;
  /** The one load at which everything is to be worked out; over all that is offered where left out. */
  readonly at?: LoadPoint;
}

/** What a stage model is given: the entry's words about one block as values, at their edges. */
export function stageGiven(entry: Entry, stage: Stage, figures: DeviceFigures): StageGiven {
  const { input } = figures;
  const efficiency = efficiencyOf(entry, stage, figures);
  const power = powerOf(entry, stage, figures);
  const span = inputSpan(entry, stage, figures, efficiency);
  const dependsOnPower =
    figures.at === undefined && entry.nameplate.totalAtInput.length > 0 && !isOnBus(stage) && isFedBySupply(entry, stage);
  return {
    id: stage.id,
    mode: (stage.mode ?? '').toLowerCase(),
    supply: {
      highest: input.highLine,
      lowest: input.lowLine,
      peak: input.peak,
      kind: entry.nameplate.input?.kind ?? null,
      frequency: lowestFrequency(entry),
      shaped: hasPfc(entry),
      isVehicle: entry.device.kind === 'car charger' && entry.nameplate.input?.kind === 'DC',
      current: input.inputCurrent,
    },
    input: span,
    lowestInputFor: (wanted) => (dependsOnPower ? inputForPower(entry, span.lowest, wanted) : span.lowest),
    output: outputOf(entry, stage, power, figures),
    power,
    efficiency,
    turnsRatio: turnsRatioOf(entry, stage),
    turns: stage.turns,
    reset: coreResetOf(entry, stage),
    rectifiedBy: rectifiedBy(entry, stage),
    cells: stage.cells,
    suppressor:
      fittedParts(entry, 'transient-suppressor')
        .find((part) => part.stage === stage.id)
        ?.references.join(', ') ?? null,
    clampResistance: resistanceOf(entry, stage, 'clamp-resistor'),
    parameter: (key, dimension, edge) => parameterOf(stage, key, dimension, edge) ?? partValue(entry, stage, key, dimension),
  };
}

/** Roles whose part holds a parameter, where the stage does not give it. */
const PART_OF_PARAMETER: Readonly<Record<string, string>> = {
  L: 'inductor',
  Lr: 'resonant-inductor',
  Cr: 'resonant-capacitor',
  'clamp capacitance': 'clamp-capacitor',
};

function partValue<D extends Dimension>(entry: Entry, stage: Stage, key: string, dimension: D): Known<D> | null {
  const role = PART_OF_PARAMETER[key];
  if (role === undefined) return null;
  const [only, ...more] = fittedParts(entry, role).filter((part) => part.stage === stage.id);
  if (only === undefined || more.length > 0 || pieces(only) > 1) return null;
  return measuredOf(only, dimension) ?? ratingOf(only, dimension);
}

/** Resistance of all resistors of one role in a stage, side by side unless their key says otherwise; null where there is none. */
function resistanceOf(entry: Entry, stage: Stage, role: string): Known<'resistance'> | null {
  const [only, ...more] = fittedParts(entry, role).filter((part) => part.stage === stage.id);
  if (only === undefined) return null;
  if (more.length > 0) return missing(`${stage.id} has several resistors of this purpose`, [`resistance of ${only.references.join(', ')}`]);
  const one = measuredOf(only, 'resistance') ?? ratingOf(only, 'resistance');
  const all = perPiece(only, one);
  const combine = only.arrangement === 'series' ? seriesResistance : parallelResistance;
  return foldFormula(all, (first, second) => applyFormula(combine, { first, second }), 'resistor');
}

function parameterOf<D extends Dimension>(stage: Stage, key: string, dimension: D, edge: ParameterEdge): Known<D> | null {
  const fact = stage.parameters[key];
  if (!isOf(fact, dimension)) return null;
  return edge === 'whole' ? factValue(fact, { bound: 'use' }) : edgeValue(fact, edge, fact.path.join('.'));
}

function isOnBus(stage: Stage): boolean {
  const side = stageOf(stage.kind)?.side;
  return side === 'primary' || side === 'barrier';
}

function inputSpan(entry: Entry, stage: Stage, figures: DeviceFigures, efficiency: Known<'ratio'>): Span<'voltage'> {
  if (!isOnBus(stage)) {
    const span = feedingVoltage(entry, stage, figures.input);
    return figures.at === undefined ? span : spanAt(entry, stage, span, figures.at);
  }
  const { bulk, input } = figures;
  const highest = isMissing(bulk.voltage) ? input.peak : bulk.voltage;
  return { highest, lowest: lowestBus(entry, stage, figures, efficiency) };
}

/** At one load a block that hangs on a direct supply or on a pack is fed by the line of that load. */
function spanAt(entry: Entry, stage: Stage, span: Span<'voltage'>, { line }: LoadPoint): Span<'voltage'> {
  if (isFedBySupply(entry, stage)) return { highest: line, lowest: line };
  if (!isFedByPack(entry, stage) || isMissing(line) || isMissing(span.lowest) || isMissing(span.highest)) return span;
  const isOfPack = line.nominal >= span.lowest.low && line.nominal <= span.highest.high;
  return isOfPack ? { highest: line, lowest: line } : span;
}

/** With a PFC its bus; without, the valley between two crests at the lowest line; for a direct supply its lowest voltage. */
function lowestBus(entry: Entry, stage: Stage, { bulk, input, power }: DeviceFigures, efficiency: Known<'ratio'>): Known<'voltage'> {
  if (entry.nameplate.input?.kind === 'DC') return input.lowLine;
  const own = parameterOf(stage, 'bus', 'voltage', 'low');
  if (own !== null) return own;
  if (hasPfc(entry)) {
    const pfc = entry.stages.find(({ kind }) => PFC_KINDS.includes(kind));
    return (pfc === undefined ? null : parameterOf(pfc, 'bus', 'voltage', 'low')) ?? assumed('voltage', CUSTOMARY.pfcBus);
  }
  const valley = applyFormula(bulkMinimumVoltageExact, {
    rms: input.lowLine,
    power: applyFormula(inputPower, { power, efficiency }),
    frequency: lowestFrequency(entry),
    capacitance: briefTrace(bulk.capacitance),
  });
  // Every current of the converter uses the valley several times over; its own working stands with the bulk capacitor.
  return briefTrace(valley);
}

function lowestFrequency(entry: Entry): Known<'frequency'> {
  const { input, evidence } = entry.nameplate;
  const [first, ...rest] = (input?.kind === 'AC' ? input.frequencies : []).map((quantity) =>
    edgeValue({ quantity, evidence }, 'low', INPUT_AT),
  );
  if (first === undefined) return assumed('frequency', CUSTOMARY.lineFrequency);
  return rest.reduce((best, one) => (isMissing(best) || (!isMissing(one) && one.nominal < best.nominal) ? one : best), first);
}

function outputOf(entry: Entry, stage: Stage, power: Known<'power'>, figures: DeviceFigures): StageGiven['output'] {
  const { input, at } = figures;
  if (stage.kind === 'dc-input' || stage.kind === 'battery-pack') return { ...outputSpan(entry, stage, input), points: [] };
  const { ports, converters } = reachOf(entry, stage);
  const highest = outputVoltage(entry, stage);
  if (at !== undefined && converters.length === 0) return outputAt(stage, highest, at);
  const points =
    converters.length > 0 || ports.every((port) => port.offers.length === 0)
      ? []
      : jointPoints(ports, togetherOf(stage, ports, power, figures));
  const own = points.length === 0 ? ownPoints(stage, highest, power) : points;
  const lowest = own.reduce<Known<'voltage'>>((best, { voltage }) => lower(best, voltage), highest);
  return { highest, lowest, points: own };
}

function outputAt(stage: Stage, offered: Known<'voltage'>, at: LoadPoint): StageGiven['output'] {
  const one = asOneOutput(at.through.get(stage.id) ?? []);
  return one === null ? { highest: offered, lowest: offered, points: [] } : { highest: one.voltage, lowest: one.voltage, points: [one] };
}

/** What the ports of a block draw together: what is known of their sets, else what the block gives at most. */
function togetherOf(stage: Stage, ports: readonly Port[], power: Known<'power'>, { shares }: DeviceFigures): Known<'power'> {
  if (ports.length < 2) return power;
  const shared = sharedPower(
    shares,
    ports.map(({ id }) => id),
  );
  return isMissing(shared) && (isOnBus(stage) || isOf(stage.parameters['power'], 'power')) ? power : shared;
}

function lower(best: Known<'voltage'>, voltage: Known<'voltage'>): Known<'voltage'> {
  if (isMissing(best) || isMissing(voltage)) return best;
  return voltage.nominal < best.nominal ? voltage : best;
}

/** A rail that feeds other converters: its own voltage, at the power of the block. */
function ownPoints(stage: Stage, voltage: Known<'voltage'>, power: Known<'power'>): readonly OutputPoint[] {
  if (isMissing(voltage)) return [];
  return [{ voltage, current: applyFormula(loadCurrent, { power, voltage }), power, name: `the output of ${stage.id}` }];
}

function efficiencyOf(entry: Entry, stage: Stage, { input, power, at }: DeviceFigures): Known<'ratio'> {
  const own = stage.parameters['efficiency'];
  if (isOf(own, 'ratio')) return factValue(own, { bound: 'use' });
  if (at !== undefined) return at.efficiency;
  return fullLoadEfficiency(entry, input.lowLine, power) ?? assumed('ratio', CUSTOMARY.efficiency);
}

/** What the block gives at most: its own figure, that of the device where all of it goes through here, else its strongest offer. */
function powerOf(entry: Entry, stage: Stage, { power, shares, at }: DeviceFigures): Known<'power'> {
  if (at !== undefined) return powerOfAll(at.through.get(stage.id) ?? []);
  const own = stage.parameters['power'];
  if (isOf(own, 'power')) return factValue(own, { bound: 'use' });
  if (isOnBus(stage)) {
    const converters = entry.stages.filter((other) => stageOf(other.kind)?.side === 'barrier');
    const alone = stageOf(stage.kind)?.side !== 'barrier' || converters.length === 1;
    return alone ? power : missing(`several converters share the power, that of ${stage.id} is not given`, [`power of ${stage.id}`]);
  }
  const { ports } = reachOf(entry, stage);
  const alone = ports.flatMap(offeredPoints).map((point) => point.power);
  const together =
    ports.length > 1
      ? [
          sharedPower(
            shares,
            ports.map(({ id }) => id),
          ),
        ]
      : [];
  const unknown = together.find(isMissing);
  if (unknown !== undefined) return missing(`${unknown.reason}, nor the power of ${stage.id}`, [...unknown.needs, `power of ${stage.id}`]);
  const strongest = largest([...alone, ...together]);
  return strongest ?? missing(`power of ${stage.id} not given`, [`power of ${stage.id}`]);
}

function rectifiedBy(entry: Entry, stage: Stage): StageGiven['rectifiedBy'] {
  const from = entry.stages.indexOf(stage);
  const behind = entry.stages.slice(from).filter((other, index) => index === 0 || other.kind === 'secondary-rectifier');
  const ids = new Set(behind.map(({ id }) => id));
  const has = (role: string): boolean => fittedParts(entry, role).some((part) => ids.has(part.stage));
  if (has('synchronous-rectifier')) return 'synchronous';
  return has('rectifier-diode') ? 'diode' : null;
}
