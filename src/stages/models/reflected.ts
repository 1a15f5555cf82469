import { reflectedVoltage } from '../../formulas/flyback/reflected-voltage.ts';
import { windingVoltage } from '../../formulas/rectifier/winding-voltage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { rectifierDrop } from './secondary-side.ts';
import type { StageGiven } from './stage-model.ts';

/** Output with the drop of a diode behind it; a synchronous rectifier drops too little to matter. */
export function windingAt(given: StageGiven, output: Known<'voltage'>): Known<'voltage'> {
  if (given.rectifiedBy !== 'diode' && given.parameter('diode drop', 'voltage', 'high') === null) return output;
  return applyFormula(windingVoltage, { output, drop: rectifierDrop(given, true) });
}

/** Reflected voltage at an output voltage, from the turns; the author's own figure where no output is named. */
export function reflectedAt(given: StageGiven, output: Known<'voltage'>): Known<'voltage'> {
  return applyFormula(reflectedVoltage, { turnsRatio: given.turnsRatio, output: windingAt(given, output) });
}

/** Highest reflected voltage: as given, else from the turns and the highest output voltage. */
export function highestReflected(given: StageGiven): Known<'voltage'> {
  return given.parameter('reflected', 'voltage', 'high') ?? reflectedAt(given, given.output.highest);
}
