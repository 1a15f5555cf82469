import type { CoreReset, Entry, Stage } from '../../entry/entry.ts';
import { forwardResetRatio } from '../../formulas/forward/forward-reset-ratio.ts';
import type { StageGiven } from '../../stages/models/stage-model.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { writtenOrigin } from '../../values/from-quantity.ts';
import { missing } from '../../values/missing.ts';
import { EXACT_DIGITS } from '../../values/supported-digits.ts';
import type { Known, Value } from '../../values/value.ts';
import { statedRatios } from './stated-ratios.ts';

type Reset = StageGiven['reset'];

/** What resets the core of a stage: as the entry says it, else as the mode says it; null where neither does. */
export function coreResetOf(entry: Entry, stage: Stage): Reset {
  if (stage.reset === null) return byMode(stage);
  const { by } = stage.reset;
  if (by === 'two switches') return TWO_SWITCHES;
  const none = missing(`${by} has no ratio of windings`);
  return { by, ratio: by === 'winding' ? ratioOf(entry, stage, stage.reset) : none };
}

/** Two diodes put the bus itself across the primary. */
const TWO_SWITCHES: Reset = {
  by: 'two switches',
  ratio: assume('ratio', 1, 1, 1, 'two diodes put the bus itself across the primary', {
    title: 'Two-switch forward',
    section: 'volt-seconds of the transformer',
    standing: 'common practice',
  }),
};

/** What the mode words of a stage say of its reset; null where they say nothing. */
export function resetInMode(mode: string | null): CoreReset['by'] | null {
  if (/two.switch/iu.test(mode ?? '')) return 'two switches';
  return /active.clamp/iu.test(mode ?? '') ? 'active clamp' : null;
}

function byMode({ mode }: Stage): Reset {
  const by = resetInMode(mode);
  if (by === 'two switches') return TWO_SWITCHES;
  return by === null ? null : { by, ratio: missing(`${by} has no ratio of windings`) };
}

function ratioOf(entry: Entry, stage: Stage, reset: CoreReset): Known<'ratio'> {
  if (reset.ratio !== null) {
    return applyFormula(forwardResetRatio, { primary: count(reset, reset.ratio[0]), reset: count(reset, reset.ratio[1]) });
  }
  if (reset.turns === null)
    return missing(`turns of the reset winding of ${stage.id} not given`, [`turns of the reset winding of ${stage.id}`]);
  const primary = statedRatios(entry, stage).find(({ windings }) => windings.length > 0);
  const turns = primary?.windings[0];
  if (primary === undefined || turns === undefined) return missing(`turns of ${stage.id} not given`, [`turns of ${stage.id}`]);
  const origin = writtenOrigin(stage.turnsEvidence, primary.written, primary.path.join('.'));
  return applyFormula(forwardResetRatio, { primary: { ...count(reset, turns), origin }, reset: count(reset, reset.turns) });
}

/** Turns are counted, so they are exact. */
function count({ evidence, written, path }: CoreReset, turns: number): Value<'ratio'> {
  const origin = writtenOrigin(evidence, written, path.join('.'));
  return { dimension: 'ratio', low: turns, nominal: turns, high: turns, significant: EXACT_DIGITS, origin };
}
