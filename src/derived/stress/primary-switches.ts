import type { Stage } from '../../entry/entry.ts';
import { reflectedVoltage } from '../../formulas/flyback/reflected-voltage.ts';
import { switchOffStateVoltage } from '../../formulas/flyback/switch-off-state-voltage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { StressRow } from '../derived.ts';
import { edgeValue, isOf } from '../fact-value.ts';
import { fittedParts } from '../fitted-parts.ts';
import { outputVoltage } from '../output-voltage.ts';
import { ratingOf } from '../part-rating.ts';
import { BUS_CLAMPED_KINDS, FLYBACK_KINDS, stageById } from '../stage-kinds.ts';
import { turnsRatioOf } from '../turns-ratio-of.ts';
import { judgeVoltage } from './judge.ts';
import type { StressInput } from './stress-input.ts';

/** Switches of the isolated converter: the bus in a half bridge, the bus and the reflected output in a flyback. */
export function primarySwitches(given: StressInput): readonly StressRow[] {
  const { entry, policy } = given;
  return ['primary-switch', 'clamp-switch'].flatMap((role) =>
    fittedParts(entry, role).map((part) => {
      const stage = stageById(entry, part.stage);
      const stress = offStateVoltage(given, stage, part.references.join(', '));
      return judgeVoltage({ part, quantity: 'off-state voltage', stress, rating: ratingOf(part, 'voltage', 'DC') }, policy);
    }),
  );
}

function offStateVoltage({ entry, bus }: StressInput, stage: Stage | null, names: string): Known<'voltage'> {
  if (stage !== null && BUS_CLAMPED_KINDS.includes(stage.kind)) return bus;
  if (stage !== null && FLYBACK_KINDS.includes(stage.kind)) {
    return applyFormula(switchOffStateVoltage, { input: bus, reflected: reflectedOf(stage, () => outputVoltage(entry, stage)) });
  }
  return missing(`no stress model yet for ${names} in ${stage === null ? 'an unknown stage' : `the stage ${stage.id}`}`, ['stage model']);
}

/** The reflected voltage as given, else from the turns and the highest output voltage. */
function reflectedOf(stage: Stage, output: () => Known<'voltage'>): Known<'voltage'> {
  const given = stage.parameters['reflected'];
  if (isOf(given, 'voltage')) return edgeValue(given, 'high', given.path.join('.'));
  return applyFormula(reflectedVoltage, { turnsRatio: turnsRatioOf(stage), output: output() });
}
