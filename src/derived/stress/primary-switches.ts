import type { Entry, Fact, Stage } from '../../entry/entry.ts';
import { clampedSwitchVoltage } from '../../formulas/flyback/clamped-switch-voltage.ts';
import { reflectedVoltage } from '../../formulas/flyback/reflected-voltage.ts';
import { switchOffStateVoltage } from '../../formulas/flyback/switch-off-state-voltage.ts';
import { switchVoltageWithSpike } from '../../formulas/flyback/switch-voltage-with-spike.ts';
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

interface OffState {
  /** Trade word, which says whether the spike of the leakage is in. */
  readonly quantity: string;
  readonly stress: Known<'voltage'>;
}

/** Switches of the isolated converter: the bus in a half bridge, the bus and the reflected output in a flyback. */
export function primarySwitches(given: StressInput): readonly StressRow[] {
  const { entry, policy } = given;
  return ['primary-switch', 'clamp-switch'].flatMap((role) =>
    fittedParts(entry, role).map((part) => {
      const { quantity, stress } = offStateOf(given, stageById(entry, part.stage), part.references.join(', '));
      return judgeVoltage({ part, quantity, stress, rating: ratingOf(part, 'voltage', 'DC') }, policy);
    }),
  );
}

function offStateOf(given: StressInput, stage: Stage | null, names: string): OffState {
  const quantity = 'off-state voltage';
  if (stage !== null && BUS_CLAMPED_KINDS.includes(stage.kind)) return { quantity, stress: given.bus };
  if (stage !== null && FLYBACK_KINDS.includes(stage.kind)) return flybackOffState(given, stage);
  const where = stage === null ? 'an unknown stage' : `the stage ${stage.id}`;
  return { quantity, stress: missing(`no stress model yet for ${names} in ${where}`, ['stage model']) };
}

/** The clamp bounds the switch where its voltage is known; else the plateau, with the spike where somebody gives it. */
function flybackOffState({ entry, bus }: StressInput, stage: Stage): OffState {
  const { clamp, spike } = { clamp: stage.parameters['clamp'], spike: stage.parameters['spike'] };
  if (isOf(clamp, 'voltage')) {
    return { quantity: 'clamped voltage', stress: applyFormula(clampedSwitchVoltage, { input: bus, clamp: highEdge(clamp) }) };
  }
  const plateau = applyFormula(switchOffStateVoltage, { input: bus, reflected: reflectedOf(entry, stage) });
  if (!isOf(spike, 'voltage')) return { quantity: 'off-state voltage without spike', stress: plateau };
  return { quantity: 'off-state voltage with spike', stress: applyFormula(switchVoltageWithSpike, { plateau, spike: highEdge(spike) }) };
}

/** The reflected voltage as given, else from the turns and the highest output voltage. */
function reflectedOf(entry: Entry, stage: Stage): Known<'voltage'> {
  const given = stage.parameters['reflected'];
  if (isOf(given, 'voltage')) return highEdge(given);
  return applyFormula(reflectedVoltage, { turnsRatio: turnsRatioOf(stage), output: outputVoltage(entry, stage) });
}

function highEdge(fact: Fact<'voltage'>): Known<'voltage'> {
  return edgeValue(fact, 'high', fact.path.join('.'));
}
