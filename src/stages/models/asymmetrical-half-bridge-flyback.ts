import { halfBridgeFlybackRectifier } from '../../formulas/half-bridge-flyback/half-bridge-flyback-rectifier.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE } from './bus-side.ts';
import { flybackOperating } from './flyback-operating.ts';
import { rectifierMean } from './flyback.ts';
import { forwardAsks } from './ratio-asks.ts';
import { highestReflected } from './reflected.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageGiven, StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** The rectifier blocks the input less the resonant capacitor over the turns, and the output: together the input over the turns. */
function reverse(given: StageGiven): Known<'voltage'> {
  return applyFormula(halfBridgeFlybackRectifier, { input: given.input.highest, turnsRatio: given.turnsRatio });
}

/** Asymmetrical half bridge: both switches block the bus and no more; the resonant capacitor holds the reflected output. */
export const ASYMMETRICAL_HALF_BRIDGE_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': (given) => [voltageStress('off-state voltage', given.input.highest)],
    'clamp-switch': (given) => [voltageStress('off-state voltage', given.input.highest)],
    'resonant-capacitor': (given) => [voltageStress('voltage', highestReflected(given), 'highest output')],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line')],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', reverse(given), 'highest line'), rectifierMean(given)],
  },
  asks: forwardAsks,
  operating: (given) => flybackOperating(given).slice(0, 3),
  assumes: ['The ripple of the resonant capacitor is left out.'],
  refuses: ['Currents, which depend on the resonance and the dead time.'],
};
