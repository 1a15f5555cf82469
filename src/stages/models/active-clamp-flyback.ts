import { BUS_SIDE } from './bus-side.ts';
import { clampCapacitorPeakVoltage } from '../../formulas/active-clamp/clamp-capacitor-peak-voltage.ts';
import { clampedSwitchVoltage } from '../../formulas/flyback/clamped-switch-voltage.ts';
import { flybackOffDuty } from '../../formulas/flyback/flyback-off-duty.ts';
import { switchVoltageWithSpike } from '../../formulas/flyback/switch-voltage-with-spike.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { flybackPeak, flybackPrimaryRms, flybackSecondaryRms } from './flyback-currents.ts';
import { flybackOperating } from './flyback-operating.ts';
import { flybackReverse, plateauOf } from './flyback-voltages.ts';
import { primaryPeak, rectifierMean } from './flyback.ts';
import { flybackAsks } from './ratio-asks.ts';
import { highestReflected, reflectedAt } from './reflected.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageGiven, StageModel, Stress } from './stage-model.ts';
import { voltageStress, worstCorner } from './stress.ts';

/** Bus and clamp; without a known clamp voltage bus and reflected output, which the clamp capacitor holds but for its ripple. */
function clamped(given: StageGiven): Stress {
  const clamp = given.parameter('clamp', 'voltage', 'high');
  const input = given.input.highest;
  if (clamp !== null) return voltageStress('clamped voltage', applyFormula(clampedSwitchVoltage, { input, clamp }), 'highest line');
  const plateau = plateauOf(given);
  const spike = given.parameter('spike', 'voltage', 'high');
  if (spike === null) return voltageStress('off-state voltage without spike', plateau, 'highest line');
  return voltageStress('off-state voltage with spike', applyFormula(switchVoltageWithSpike, { plateau, spike }), 'highest line');
}

/** The clamp as it was read; else the reflected output with the swing of leakage and capacitor around it, where both are known. */
function clampCapacitor(given: StageGiven): Stress {
  const own = given.parameter('clamp', 'voltage', 'high');
  if (own !== null) return voltageStress('voltage', own);
  const leakage = given.parameter('leakage', 'inductance', 'high');
  const capacitance = given.parameter('clamp capacitance', 'capacitance', 'low');
  const frequency = given.parameter('frequency', 'frequency', 'low');
  if (leakage === null || capacitance === null || frequency === null) {
    return voltageStress('voltage without its swing', highestReflected(given), 'highest output');
  }
  const { stress, corner } = worstCorner(given, (point) => {
    const reflected = reflectedAt(given, point.voltage);
    const share = applyFormula(flybackOffDuty, { reflected, input: given.input.lowest });
    return applyFormula(clampCapacitorPeakVoltage, { reflected, peak: flybackPeak(given, point), leakage, capacitance, share, frequency });
  });
  return voltageStress('peak voltage', stress, corner === null ? null : `lowest line, ${corner}`);
}

/** Flyback with an active clamp: no free spike, both switches stand the bus and the clamp. */
export const ACTIVE_CLAMP_FLYBACK_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': (given) => [clamped(given), primaryPeak(given)],
    'clamp-switch': (given) => [clamped(given)],
    'clamp-capacitor': (given) => [clampCapacitor(given)],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', flybackReverse(given), 'highest line')],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', flybackReverse(given), 'highest line'), rectifierMean(given)],
  },
  asks: flybackAsks,
  operating: flybackOperating,
  rms: { 'primary-switch': flybackPrimaryRms, 'synchronous-rectifier': flybackSecondaryRms },
  assumes: [
    'For the switches, a clamp capacitor large enough that its swing does not matter.',
    'A clamp capacitor tied to the bus: one that is tied to ground stands the bus on top.',
    'Operation at the boundary of continuous conduction where no mode is given; the negative current that swings the node is left out.',
  ],
  refuses: ['The verdict on both switches where neither turns nor reflected nor clamp voltage are given.'],
};
