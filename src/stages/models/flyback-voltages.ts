import { clampVoltage } from '../../formulas/flyback/clamp-voltage.ts';
import { clampedSwitchVoltage } from '../../formulas/flyback/clamped-switch-voltage.ts';
import { switchOffStateVoltage } from '../../formulas/flyback/switch-off-state-voltage.ts';
import { switchVoltageBulkAllowance } from '../../formulas/flyback/switch-voltage-bulk-allowance.ts';
import { switchVoltageClampMultiple } from '../../formulas/flyback/switch-voltage-clamp-multiple.ts';
import { switchVoltageHalfOvershoot } from '../../formulas/flyback/switch-voltage-half-overshoot.ts';
import { switchVoltageOfMethods } from '../../formulas/flyback/switch-voltage-of-methods.ts';
import { switchVoltageWithSpike } from '../../formulas/flyback/switch-voltage-with-spike.ts';
import { rectifierReverseVoltage } from '../../formulas/rectifier/rectifier-reverse-voltage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { rangeOverMethods } from '../../values/range-over-methods.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { flybackPeakAtWorst } from './flyback-currents.ts';
import { highestReflected } from './reflected.ts';
import type { StageGiven, Stress } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** Names of the methods for the spike of the leakage, by the input of the formula that holds them. */
const METHODS: Readonly<Record<string, string>> = {
  clampAnalysis: 'balance of the clamp (Fairchild AN-4137)',
  halfOvershoot: 'half of the reflected voltage on top (TI SLVAFK6)',
  bulkAllowance: '30 % of the bulk voltage on top (TI SLUS223F)',
  clampMultiple: 'clamp at 2.5 times the reflected voltage (Maxim MAXREFDES1085)',
};

/** Clamp voltage above the input: as given, else from the balance of leakage and clamp resistor. */
export function clampAbove(given: StageGiven): Known<'voltage'> {
  const own = given.parameter('clamp', 'voltage', 'high');
  if (own !== null) return own;
  const leakage = given.parameter('leakage', 'inductance', 'high');
  const frequency = given.parameter('frequency', 'frequency', 'high');
  const resistance = given.clampResistance;
  if (leakage === null || frequency === null || resistance === null) {
    return missing(`clamp voltage of ${given.id} not given`, [`clamp of ${given.id}`]);
  }
  return applyFormula(clampVoltage, {
    reflected: highestReflected(given),
    resistance,
    leakage,
    frequency,
    peak: flybackPeakAtWorst(given).stress,
  });
}

/** Highest voltage across the switch of a flyback with a passive clamp: as clamped, with the spike as seen, else over the methods. */
export function flybackSwitch(given: StageGiven, quantity = 'off-state voltage'): Stress {
  const input = given.input.highest;
  const clamp = given.parameter('clamp', 'voltage', 'high');
  if (clamp !== null) return voltageStress('clamped voltage', applyFormula(clampedSwitchVoltage, { input, clamp }), 'highest line');
  const plateau = plateauOf(given);
  const spike = given.parameter('spike', 'voltage', 'high');
  if (spike !== null)
    return voltageStress(`${quantity} with spike`, applyFormula(switchVoltageWithSpike, { plateau, spike }), 'highest line');
  const at = { input, reflected: highestReflected(given) };
  const methods = {
    clampAnalysis: applyFormula(clampedSwitchVoltage, { input, clamp: clampAbove(given) }),
    halfOvershoot: applyFormula(switchVoltageHalfOvershoot, at),
    bulkAllowance: applyFormula(switchVoltageBulkAllowance, at),
    clampMultiple: applyFormula(switchVoltageClampMultiple, at),
  };
  const used = Object.entries(methods).filter(([, one]) => !isMissing(one));
  // Without the reflected voltage every method is missing for the same reason; the plateau says it once.
  const stress = used.length === 0 ? plateau : rangeOverMethods(switchVoltageOfMethods, methods);
  return { ...voltageStress(`${quantity} with spike`, stress, 'highest line'), methods: used.map(([key]) => METHODS[key] ?? key) };
}

/** Bus and reflected output, without the spike. */
export function plateauOf(given: StageGiven): Known<'voltage'> {
  return applyFormula(switchOffStateVoltage, { input: given.input.highest, reflected: highestReflected(given) });
}

/** What the rectifier of a flyback blocks while the switch is on. */
export function flybackReverse(given: StageGiven): Known<'voltage'> {
  return applyFormula(rectifierReverseVoltage, { input: given.input.highest, turnsRatio: given.turnsRatio, output: given.output.highest });
}
