import { forwardResetDiodeVoltage } from '../../formulas/forward/forward-reset-diode-voltage.ts';
import { inputOverTurns } from '../../formulas/rectifier/input-over-turns.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE } from './bus-side.ts';
import { rectifierMean } from './flyback.ts';
import { forwardResetBalance, forwardSwitch, highestResetVoltage, worse } from './forward-reset.ts';
import { forwardAsks } from './ratio-asks.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { OperatingValue, StageGiven, StageModel, Stress } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/**
 * The free-wheeling diode blocks the input over the turns, the other one the reset voltage over the turns. Which of the two a part is
 * nobody says, so both are held to the larger; while the reset is not known, to the first.
 */
function reverse(given: StageGiven): Known<'voltage'> {
  const { input, turnsRatio, reset } = given;
  const freewheeling = applyFormula(inputOverTurns, { input: input.highest, turnsRatio });
  return reset === null
    ? freewheeling
    : worse(freewheeling, applyFormula(inputOverTurns, { input: highestResetVoltage(given), turnsRatio }));
}

/** The diode of a reset winding, of a clamp, or one of the two that tie two switches to the bus. */
function resetDiode(given: StageGiven): Stress {
  const { reset, input } = given;
  if (reset?.by !== 'winding') return forwardSwitch(given, 'reverse voltage');
  const blocked = applyFormula(forwardResetDiodeVoltage, { input: input.highest, resetRatio: reset.ratio });
  return voltageStress('reverse voltage', blocked, 'highest line');
}

/** An RCD clamp holds the reset voltage; an active one that or the whole switch voltage, depending on where it is tied. */
function clampCapacitor(given: StageGiven): Stress {
  if (given.reset?.by !== 'active clamp') return voltageStress('voltage', highestResetVoltage(given), 'highest line');
  const unknown = missing(`whether the clamp of ${given.id} is tied to the bus or to ground is not known`, [
    `voltage across the clamp capacitor of ${given.id}`,
  ]);
  return voltageStress('voltage', unknown);
}

function operating(given: StageGiven): readonly OperatingValue[] {
  const balance = forwardResetBalance(given);
  const asks = forwardAsks(given);
  return [
    { name: 'turns ratio', value: given.turnsRatio },
    { name: asks.name, value: asks.value },
    ...(balance === null ? [] : [{ name: 'largest duty at which the core is reset', value: balance.largest }]),
  ];
}

/** Forward converter: what the switch stands depends on what resets the core. */
export const FORWARD_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': (given) => [forwardSwitch(given)],
    'clamp-switch': (given) => [forwardSwitch(given)],
    'clamp-diode': (given) => [resetDiode(given)],
    'clamp-capacitor': (given) => [clampCapacitor(given)],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line')],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line'), rectifierMean(given)],
  },
  asks: forwardAsks,
  reset: forwardResetBalance,
  operating,
  assumes: [
    'Ringing, and the spike of the leakage where none is given, are left out.',
    'Either rectifier is held to the larger of what the two block.',
  ],
  refuses: [
    'The switch of a single-switch forward where the entry does not say what resets the core, or at which voltage a clamp does.',
    'The clamp capacitor of an active clamp, which may be tied to the bus or to ground.',
  ],
};
