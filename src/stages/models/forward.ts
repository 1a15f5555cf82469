import { inputOverTurns } from '../../formulas/rectifier/input-over-turns.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE } from './bus-side.ts';
import { rectifierMean } from './flyback.ts';
import { forwardAsks } from './ratio-asks.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageGiven, StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** Two switches are clamped to the bus by their diodes; one alone stands what resets the core on top, which must be known. */
function offState(given: StageGiven): Known<'voltage'> {
  if (/two.switch/u.test(given.mode)) return given.input.highest;

  const why = `how the core of ${given.id} is reset is not known: two switches see the bus, one sees twice the bus or more`;
  return missing(why, [`mode of ${given.id}`]);
}

function reverse(given: StageGiven): Known<'voltage'> {
  return applyFormula(inputOverTurns, { input: given.input.highest, turnsRatio: given.turnsRatio });
}

/** Forward converter: rectifier and free-wheeling diode both block the input over the turns. */
export const FORWARD_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': (given) => [voltageStress('off-state voltage', offState(given), 'highest line')],
    'clamp-diode': (given) => [voltageStress('reverse voltage', offState(given), 'highest line')],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line')],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line'), rectifierMean(given)],
  },
  asks: forwardAsks,
  operating: (given) => [{ name: 'turns ratio', value: given.turnsRatio }],
  assumes: ['Ringing is left out.'],
  refuses: ['The single-switch forward: its switch depends on the reset winding or clamp, which the entry does not hold.'],
};
