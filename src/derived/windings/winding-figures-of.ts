import type { Entry, Stage } from '../../entry/entry.ts';
import { stageOf } from '../../stages/index.ts';
import type { StageGiven } from '../../stages/models/stage-model.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { StageGivens } from '../stress/stage-givens.ts';
import { statedRatios } from './stated-ratios.ts';
import type { AskedOfRatio, WindingFigures } from './winding-figures.ts';

/** What is said of the windings of each stage, and what the ratio asks of the stage at its voltages. */
export function windingFigures(entry: Entry, givens: StageGivens): readonly WindingFigures[] {
  return entry.stages.flatMap((stage) => {
    const stated = statedRatios(entry, stage);
    const reset = stageOf(stage.kind)?.model?.reset?.(givens(stage)) ?? null;
    return stated.length === 0 && reset === null ? [] : [{ stage: stage.id, stated, asked: asked(stage, givens(stage)), reset }];
  });
}

function asked(stage: Stage, given: StageGiven): AskedOfRatio | null {
  const ask = stageOf(stage.kind)?.model?.asks;
  const turned = inverseOf(given.turnsRatio);
  if (ask === undefined || isMissing(given.turnsRatio)) return null;
  return { ...ask(given), inverse: ask({ ...given, turnsRatio: turned }).value };
}

/** The ratio as it would be had somebody written secondary over primary. */
function inverseOf(ratio: Known<'ratio'>): Known<'ratio'> {
  return isMissing(ratio) ? ratio : { ...ratio, low: 1 / ratio.high, nominal: 1 / ratio.nominal, high: 1 / ratio.low };
}
