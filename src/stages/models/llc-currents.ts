import { llcLoadCurrent } from '../../formulas/llc/llc-load-current.ts';
import { llcMagnetisingCurrentTriangle } from '../../formulas/llc/llc-magnetising-current-triangle.ts';
import { llcPrimaryCurrent } from '../../formulas/llc/llc-primary-current.ts';
import { llcPrimaryCurrentConservative } from '../../formulas/llc/llc-primary-current-conservative.ts';
import { llcPrimaryCurrentOfMethods } from '../../formulas/llc/llc-primary-current-of-methods.ts';
import { llcPrimaryCurrentResistive } from '../../formulas/llc/llc-primary-current-resistive.ts';
import { llcResonantFrequency } from '../../formulas/llc/llc-resonant-frequency.ts';
import { sinePeakCurrent } from '../../formulas/llc/sine-peak-current.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { exact } from '../../values/exact.ts';
import { rangeOverMethods } from '../../values/range-over-methods.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { equivalentRatio, magnetisingOf, tankOf } from './llc-tank.ts';
import { windingAt } from './reflected.ts';
import type { Corner, OutputPoint, StageGiven } from './stage-model.ts';
import { worstCorner } from './stress.ts';
import { wanted } from './wanted.ts';

type Amps = Known<'current'>;

/** Names of the published methods that give the current of this tank, for stresses that rest on it; none where it is missing. */
export function tankCurrentMethods(given: StageGiven): readonly string[] {
  if (isMissing(magnetisingOf(given, 'low'))) return [];
  const two = ['load and magnetising current at right angles (TI SLUP263)', 'with the loss counted in (Fairchild AN-4151)'];
  return given.parameter('lowest bus', 'voltage', 'low') === null
    ? two
    : [...two, 'tank taken as resistive at the lowest bus (Infineon ICE2HS01G)'];
}

/** Lowest frequency that was given, else the resonance of the tank. */
export function frequencyOf(given: StageGiven): Known<'frequency'> {
  const own = given.parameter('frequency', 'frequency', 'low') ?? given.parameter('resonance', 'frequency', 'low');
  if (own !== null) return own;
  const tank = { inductance: wanted(given, 'Lr', 'inductance', 'high'), capacitance: wanted(given, 'Cr', 'capacitance', 'high') };
  return applyFormula(llcResonantFrequency, tank);
}

/** Stresses, operating values and losses ask for the same current. */
const KNOWN = new WeakMap<StageGiven, Map<OutputPoint, Amps>>();

/** Rms in primary winding and tank at one output, over the published methods. */
export function tankCurrent(given: StageGiven, point: OutputPoint): Amps {
  const known = KNOWN.get(given) ?? new Map<OutputPoint, Amps>();
  KNOWN.set(given, known);
  const before = known.get(point);
  if (before !== undefined) return before;
  const current = overMethods(given, point);
  known.set(point, current);
  return current;
}

function overMethods(given: StageGiven, point: OutputPoint): Amps {
  const rightAngles = atRightAngles(given, point);
  // Without the magnetising inductance the other methods would pass for the whole.
  if (isMissing(rightAngles)) return rightAngles;
  return rangeOverMethods(llcPrimaryCurrentOfMethods, {
    rightAngles,
    withLoss: withLoss(given, point),
    resistive: resistive(given, point),
  });
}

/** Load and magnetising current, by the ratio of the equivalent circuit, so that the power in is the power out. */
function atRightAngles(given: StageGiven, point: OutputPoint): Amps {
  const turnsRatio = equivalentRatio(given);
  const load = applyFormula(llcLoadCurrent, { current: point.current, turnsRatio });
  const magnetising = applyFormula(llcMagnetisingCurrentTriangle, {
    turnsRatio,
    output: windingAt(given, point.voltage),
    frequency: frequencyOf(given),
    inductance: magnetisingOf(given, 'low'),
  });
  return applyFormula(llcPrimaryCurrent, { load, magnetising });
}

function withLoss(given: StageGiven, point: OutputPoint): Amps {
  return applyFormula(llcPrimaryCurrentConservative, {
    efficiency: given.efficiency,
    current: point.current,
    turnsRatio: given.turnsRatio,
    output: windingAt(given, point.voltage),
    frequency: frequencyOf(given),
    gain: tankOf(given).transformerGain ?? exact('ratio', 1),
    inductance: magnetisingOf(given, 'low'),
  });
}

/** Only at the lowest bus that is known: elsewhere it is low by the magnetising current. */
function resistive(given: StageGiven, { power }: OutputPoint): Amps {
  const drawn = applyFormula(inputPower, { power, efficiency: given.efficiency });
  return applyFormula(llcPrimaryCurrentResistive, { power: drawn, input: wanted(given, 'lowest bus', 'voltage', 'low') });
}

/** Crest of the tank current where it is largest; the author's own figure first. */
export function tankPeak(given: StageGiven): Corner<'current'> {
  const own = given.parameter('peak current', 'current', 'high');
  if (own !== null) return { stress: own, corner: null };
  return worstCorner(given, (point) => applyFormula(sinePeakCurrent, { rms: tankCurrent(given, point) }));
}
