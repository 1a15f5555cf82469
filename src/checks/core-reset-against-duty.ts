import { resetInMode } from '../derived/windings/core-reset-of.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';
import type { ResetBalance } from '../stages/models/stage-model.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'core-reset-against-duty',
  title: 'A forward whose core would not be reset',
  severity: 'warning',
  why: 'What the switch puts into the core in one part of a cycle has to be taken out in the rest of it; else the flux climbs until the core saturates and the switch fails. A working device does it, so one of the numbers is a slip.',
  advice: 'Look at the turns of primary, secondary and reset winding, at the lowest bus and at how the core is reset.',
  source: commonPractice('volt-seconds of a transformer balance in each cycle'),
};

export const coreResetAgainstDuty: Check = { ...RULE, check };

type Stage = Entry['stages'][number];

function check({ entry, derived }: CheckInput): Finding[] {
  return entry.stages.flatMap((stage) => {
    const figures = derived.windings.find((one) => one.stage === stage.id);
    return [...unbalanced(stage, figures?.reset ?? null), ...contradicted(stage)];
  });
}

/** Only where whole intervals do not meet: an assumed lowest bus widens the duty that is asked for. */
function unbalanced(stage: Stage, reset: ResetBalance | null): Finding[] {
  if (reset === null || isMissing(reset.largest)) return [];
  const { by, asked, stated, largest } = reset;
  const of = `the largest duty at which ${RESET_BY[by]} resets its core is ${rounded(largest.nominal)}`;
  if (isAbove(stated, largest)) {
    const message = `${stage.id}: a duty of ${rounded(stated.nominal)} is given, ${of}.`;
    return [findingOf(RULE, atValue(...stage.path, 'duty'), { message, subject: stage.id })];
  }
  if (!isAbove(asked, largest)) return [];
  const message = `${stage.id}: its highest output asks for a duty of ${rounded(asked.nominal)} at the lowest bus, ${of}.`;
  const place = stage.reset === null ? atKey(...stage.path) : atValue(...stage.reset.path);
  return [findingOf(RULE, place, { message, subject: stage.id })];
}

function isAbove(duty: Known<'ratio'> | null, largest: Value<'ratio'>): duty is Value<'ratio'> {
  return duty !== null && !isMissing(duty) && duty.low > largest.high * (1 + 1e-9);
}

const RESET_BY: Readonly<Record<ResetBalance['by'], string>> = {
  winding: 'the reset winding',
  'two switches': 'the bus behind two switches',
  RCD: 'the RCD clamp',
  'active clamp': 'the active clamp',
  resonance: 'the resonance',
};

/** A mode that says one thing and a reset that says another. */
function contradicted({ id, mode, reset }: Stage): Finding[] {
  const said = resetInMode(mode);
  const single = /single.switch/iu.test(mode ?? '') && reset?.by === 'two switches';
  if (reset === null || ((said === null || said === reset.by) && !single)) return [];
  const message = `${id}: the mode is ${mode ?? ''}, the reset ${reset.written}. Computed with the reset.`;
  return [findingOf(RULE, atValue(...reset.path), { message, subject: id })];
}
