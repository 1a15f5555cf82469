import type { Entry, Stage } from '../entry/entry.ts';
import { holdUpTime } from '../formulas/bulk/hold-up-time.ts';
import { bulkCapacitancePerWatt } from '../formulas/bulk/bulk-capacitance-per-watt.ts';
import { inputPower } from '../formulas/mains/input-power.ts';
import { busRipple } from '../formulas/pfc/bus-ripple.ts';
import { stageOf } from '../stages/index.ts';
import { wanted } from '../stages/models/wanted.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { briefTrace } from '../values/brief-trace.ts';
import type { BulkFigures, OperatingFigure, StageGainCurve } from './derived.ts';
import { senseLimits } from './sense-limits.ts';
import { PFC_KINDS } from './stage-kinds.ts';
import type { StageGivens } from './stress/stage-givens.ts';
import type { RatioOrigin, WindingFigures } from './windings/winding-figures.ts';

/** What each stage works at, from what a reviewer has: turns ratio, reflected voltage, resonance, ripple, hold-up, current limit. */
export function operatingFigures(
  entry: Entry,
  bulk: BulkFigures,
  givens: StageGivens,
  windings: readonly WindingFigures[],
): readonly OperatingFigure[] {
  return entry.stages.flatMap((stage) => {
    const own = stageOf(stage.kind)?.model?.operating?.(givens(stage)) ?? [];
    const [first, ...rest] = own;
    const ratios = otherRatios(windings.find((one) => one.stage === stage.id));
    return [
      ...(first === undefined ? [] : [first]),
      ...ratios,
      ...rest,
      ...ofBus(stage, bulk, givens),
      ...senseLimits(entry, stage, givens),
    ].map((one) => ({
      stage: stage.id,
      ...one,
    }));
  });
}

/** Gain curves of the resonant stages whose tank is known. */
export function gainCurves(entry: Entry, givens: StageGivens): readonly StageGainCurve[] {
  return entry.stages.flatMap((stage) => {
    const curve = stageOf(stage.kind)?.model?.gainCurve?.(givens(stage)) ?? null;
    return curve === null ? [] : [{ stage: stage.id, ...curve }];
  });
}

type Figures = readonly Omit<OperatingFigure, 'stage'>[];

/** The ratio as it is given otherwise too, with what stands above it: a reader sees both, and which one counts. */
function otherRatios(windings: WindingFigures | undefined): Figures {
  const [used, ...others] = windings?.stated ?? [];
  if (used === undefined) return [];
  // The same turns once more, on the transformer, tell nothing new.
  const telling = others.filter(({ from, written }) => from !== 'transformer' || written !== used.written);
  return telling.map(({ from, value }) => ({ name: `turns ratio by ${GIVEN_BY[from]} (computed with ${GIVEN_BY[used.from]})`, value }));
}

const GIVEN_BY: Readonly<Record<RatioOrigin, string>> = {
  turns: 'the turns',
  transformer: 'the turns on the transformer',
  ratio: 'the stated ratio',
  'winding voltages': 'the winding voltages',
  'reflected voltage': 'the reflected voltage',
};

/** The bulk capacitor at work: ripple at twice the line behind a PFC, the valley at the lowest line without, and what it holds up. */
function ofBus(stage: Stage, bulk: BulkFigures, givens: StageGivens): Figures {
  if (bulk.references.length === 0) return [];
  const capacitance = briefTrace(bulk.capacitance);
  const given = givens(stage);
  if (PFC_KINDS.includes(stage.kind)) {
    const bus = given.input.lowest;
    const ripple = applyFormula(busRipple, { power: given.power, frequency: given.supply.frequency, capacitance, bus });
    return [{ name: 'ripple of the bus at twice the line', value: ripple }];
  }
  if (stageOf(stage.kind)?.side !== 'barrier') return [];
  const power = applyFormula(inputPower, { power: given.power, efficiency: given.efficiency });
  const holdUp = applyFormula(holdUpTime, {
    capacitance,
    start: given.input.lowest,
    end: wanted(given, 'lowest bus', 'voltage', 'low'),
    power,
  });
  const perWatt = applyFormula(bulkCapacitancePerWatt, { capacitance, power: given.power });
  const valley =
    given.supply.shaped || given.supply.kind === 'DC'
      ? []
      : [{ name: 'lowest bulk voltage at the lowest line', value: given.input.lowest }];
  return [...valley, { name: 'hold-up time', value: holdUp }, { name: 'bulk capacitance per watt', value: perWatt }];
}
