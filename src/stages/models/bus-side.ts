import { bridgeMeanCurrent } from '../../formulas/pfc/bridge-mean-current.ts';
import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import type { StageGiven, StageModel, Stress } from './stage-model.ts';
import { currentStress, voltageStress } from './stress.ts';

/** Power that the block draws for what it gives. */
export function drawnPower(given: StageGiven): Known<'power'> {
  return applyFormula(inputPower, { power: given.power, efficiency: given.efficiency });
}

/**
 * Mean current of the bridge: of the rectified sine with a PFC behind it, else the direct current drawn from the bulk capacitor
 * at the valley of the lowest line.
 */
export function bridgeCurrent(given: StageGiven): Known<'current'> {
  if (given.supply.shaped) return applyFormula(bridgeMeanCurrent, { power: drawnPower(given), rms: given.supply.lowest });
  return applyFormula(loadCurrent, { power: drawnPower(given), voltage: given.input.lowest });
}

/** Stresses of the parts that stand on the mains side of any block: bridge, bulk and film capacitors, bypass diode. */
export const BUS_SIDE: StageModel['stresses'] = {
  'bridge-rectifier': (given) => bridge(given),
  'bulk-capacitor': (given) => [voltageStress('voltage', given.input.highest, 'highest line')],
  'bypass-diode': (given) => [voltageStress('reverse voltage', given.input.highest, 'highest bus, at the zero of the mains')],
};

function bridge(given: StageGiven): readonly Stress[] {
  const corner = given.supply.kind === 'AC' ? 'highest line' : null;
  const voltage = voltageStress('reverse voltage', given.supply.peak, corner);
  return [voltage, currentStress('mean current', () => ({ stress: bridgeCurrent(given), corner: 'lowest line, full load' }))];
}
