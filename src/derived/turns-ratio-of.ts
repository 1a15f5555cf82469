import type { Stage } from '../entry/entry.ts';
import { turnsRatio } from '../formulas/flyback/turns-ratio.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import { EXACT_DIGITS } from '../values/supported-digits.ts';
import type { Known, Value } from '../values/value.ts';

/** Primary turns over the turns of the first secondary winding, as the stage lists them. */
export function turnsRatioOf(stage: Stage): Known<'ratio'> {
  const [primary, secondary] = stage.turns;
  if (primary === undefined || secondary === undefined) return missing(`turns of ${stage.id} not given`, [`turns of ${stage.id}`]);
  if (!(primary > 0 && secondary > 0))
    return missing(`turns of ${stage.id} are not counts: ${stage.turns.join(':')}`, [`turns of ${stage.id}`]);
  return applyFormula(turnsRatio, { primary: countOf(stage, primary), secondary: countOf(stage, secondary) });
}

/** Turns are counted, so they are exact. */
function countOf(stage: Stage, turns: number): Value<'ratio'> {
  const origin = { evidence: 'measured', written: stage.turns.join(':'), at: [...stage.path, 'turns'].join('.') } as const;
  return { dimension: 'ratio', low: turns, nominal: turns, high: turns, significant: EXACT_DIGITS, origin };
}
