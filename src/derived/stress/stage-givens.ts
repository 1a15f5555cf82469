import type { Entry, Stage } from '../../entry/entry.ts';
import type { StageGiven } from '../../stages/models/stage-model.ts';
import { type DeviceFigures, stageGiven } from './stage-given.ts';

/** What each stage is given, worked out once. */
export type StageGivens = (stage: Stage) => StageGiven;

/** Keeps what was worked out for a stage, since stresses, operating values and losses ask for the same. */
export function stageGivens(entry: Entry, figures: DeviceFigures): StageGivens {
  const known = new Map<Stage, StageGiven>();
  return (stage) => {
    const before = known.get(stage);
    if (before !== undefined) return before;
    const given = stageGiven(entry, stage, figures);
    known.set(stage, given);
    return given;
  };
}
