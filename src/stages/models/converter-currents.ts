import { boostInductorRipple } from '../../formulas/buck/boost-inductor-ripple.ts';
import { buckDuty } from '../../formulas/buck/buck-duty.ts';
import { buckInductorRipple } from '../../formulas/buck/buck-inductor-ripple.ts';
import { buckInputCapacitorRms } from '../../formulas/buck/buck-input-capacitor-rms.ts';
import { inductorPeakCurrent } from '../../formulas/buck/inductor-peak-current.ts';
import { rippleCarryingRms } from '../../formulas/buck/ripple-carrying-rms.ts';
import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { Corner, OperatingValue, OutputPoint, RoleCurrent, StageGiven, StageModel, Stress } from './stage-model.ts';
import { currentStress, worstCorner } from './stress.ts';
import { wanted } from './wanted.ts';

type Amps = Known<'current'>;
type Kind = 'buck' | 'boost' | 'buck-boost';

/** Mean and ripple of the inductor current at one output and one input. */
interface Inductor {
  readonly mean: Amps;
  readonly ripple: Amps;
}

/** Currents of a converter around one inductor: a buck, a boost, or the four-switch converter that is either. */
export function converterCurrents(kind: Kind): {
  readonly peak: (given: StageGiven) => Stress;
  readonly inputRipple: (given: StageGiven) => Stress;
  readonly operating: (given: StageGiven) => readonly OperatingValue[];
  readonly rms: NonNullable<StageModel['rms']>;
} {
  const peakAt = (given: StageGiven, point: OutputPoint): Amps =>
    larger(corners(kind, given, point).map(({ mean, ripple }) => applyFormula(inductorPeakCurrent, { current: mean, ripple })));
  const peakOf = (given: StageGiven): Corner<'current'> => {
    const own = given.parameter('peak current', 'current', 'high');
    if (own !== null) return { stress: own, corner: null };
    return worstCorner(given, (point) => peakAt(given, point));
  };
  const rmsOf = (given: StageGiven): RoleCurrent => {
    const rms = ({ mean, ripple }: Inductor): Amps => applyFormula(rippleCarryingRms, { current: mean, ripple });
    const { stress, corner } = worstCorner(given, (point) => larger(corners(kind, given, point).map(rms)));
    return { current: stress, corner: corner ?? 'full load', places: 2, carrying: 1 };
  };
  return {
    peak: (given) => currentStress('peak current', () => peakOf(given)),
    inputRipple: (given) => currentStress('ripple current', () => worstCorner(given, (point) => inputRipple(given, point))),
    operating: (given) => peaks(given, peakOf(given).stress, peakAt),
    rms: { 'buck-switch': rmsOf, inductor: (given) => ({ ...rmsOf(given), places: 1 }) },
  };
}

/** The largest peak; where it is not known, since some output has no known input, those of the outputs that have one. */
function peaks(given: StageGiven, largest: Amps, at: (given: StageGiven, point: OutputPoint) => Amps): readonly OperatingValue[] {
  const name = 'peak current of the inductor';
  const some = isMissing(largest) ? given.output.points : [];
  const known = some.flatMap((point): OperatingValue[] => {
    const value = at(given, point);
    return isMissing(value) ? [] : [{ name: `${name} at ${point.name}`, value }];
  });
  return [{ name, value: largest }, ...known];
}

/** A buck is worst at the highest input, a boost at the lowest; four switches meet both where the output lies between. */
function corners(kind: Kind, given: StageGiven, point: OutputPoint): readonly Inductor[] {
  const { highest } = given.input;
  const lowest = given.lowestInputFor(point.power);
  if (kind === 'buck') return [stepDown(given, point, highest)];
  if (kind === 'boost') return [stepUp(given, point, lowest)];
  const canStepUp = isMissing(lowest) || isMissing(point.voltage) || point.voltage.nominal >= lowest.nominal;
  const canStepDown = isMissing(highest) || isMissing(point.voltage) || point.voltage.nominal < highest.nominal;
  return [...(canStepUp ? [stepUp(given, point, lowest)] : []), ...(canStepDown ? [stepDown(given, point, highest)] : [])];
}

function stepDown(given: StageGiven, { voltage: output, current }: OutputPoint, input: Known<'voltage'>): Inductor {
  return { mean: current, ripple: own(given) ?? applyFormula(buckInductorRipple, { input, output, ...choke(given) }) };
}

/** While it steps up, the inductor carries the input current, and with it what the converter loses. */
function stepUp(given: StageGiven, { voltage: output, power }: OutputPoint, input: Known<'voltage'>): Inductor {
  const drawn = applyFormula(inputPower, { power, efficiency: efficiencyOf(given) });
  const mean = applyFormula(loadCurrent, { power: drawn, voltage: input });
  return { mean, ripple: own(given) ?? applyFormula(boostInductorRipple, { input, output, ...choke(given) }) };
}

/** Of the block itself: that of the whole device may hold the losses of others. */
function efficiencyOf(given: StageGiven): Known<'ratio'> {
  const own = given.parameter('efficiency', 'ratio', 'low');
  if (own !== null) return own;
  const { low, nominal, high, reason, source } = CUSTOMARY.converterEfficiency;
  return assume('ratio', low, nominal, high, reason, source);
}

function own(given: StageGiven): Amps | null {
  return given.parameter('ripple current', 'current', 'high');
}

function choke(given: StageGiven): { readonly inductance: Known<'inductance'>; readonly frequency: Known<'frequency'> } {
  return { inductance: wanted(given, 'L', 'inductance', 'low'), frequency: wanted(given, 'frequency', 'frequency', 'low') };
}

/** Rms of what the input capacitors of a buck supply: worst where the output is half of the input, not at the highest output. */
function inputRipple(given: StageGiven, point: OutputPoint): Amps {
  const { mean: current, ripple } = stepDown(given, point, given.input.highest);
  return applyFormula(buckInputCapacitorRms, {
    duty: applyFormula(buckDuty, { output: point.voltage, input: given.input.highest }),
    current,
    ripple,
  });
}

function larger(several: readonly Amps[]): Amps {
  const unknown = several.find(isMissing);
  if (unknown !== undefined) return unknown;
  return several.reduce<Amps>(
    (best, one) => (isMissing(best) || (!isMissing(one) && one.high > best.high) ? one : best),
    missing('no corner'),
  );
}
