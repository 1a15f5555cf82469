import type { Entry } from '../../entry/entry.ts';
import { valueOf } from '../../values/from-quantity.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { INPUT_AT } from '../supply-lines.ts';

/** Powers that differ by less are one: 20 V and 5.01 A are the 100 W of a step. */
const SAME_POWER = 0.01;

/**
 * Lowest input at which a device gives a power, where its nameplate says that the power depends on the input: 100 W from 12 V, 140 W
 * from 20 V. What it gives below its first step is not stated, so for less power the answer is missing unless the input ends there.
 *
 * @param lowest lowest input that the block meets, which is the answer where nothing depends on the input
 */
export function inputForPower(entry: Entry, lowest: Known<'voltage'>, power: Known<'power'>): Known<'voltage'> {
  const { totalAtInput, evidence } = entry.nameplate;
  const steps = totalAtInput.toSorted((one, other) => one.power.nominal - other.power.nominal);
  const [first] = steps;
  if (first === undefined || isMissing(power)) return lowest;
  const step = steps.find((one) => power.nominal <= one.power.nominal * (1 + SAME_POWER));
  if (step === undefined) return missing('no stated input gives that power', ['output power over the input']);
  if (step !== first || power.nominal >= first.power.nominal * (1 - SAME_POWER)) {
    return valueOf({ quantity: step.from, evidence }, INPUT_AT, { bound: 'use' });
  }
  if (!isMissing(lowest) && lowest.nominal >= first.from.nominal) return lowest;
  return missing(`what is given below ${first.from.written} of input is not stated`, [`output power below ${first.from.written}`]);
}
