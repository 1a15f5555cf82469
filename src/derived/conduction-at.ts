import type { Entry } from '../entry/entry.ts';
import { conductionLosses } from './conduction-losses.ts';
import type { LossItem } from './derived.ts';
import type { LoadPoint } from './load-point.ts';
import type { DeviceFigures } from './stress/stage-given.ts';
import { stageGivens } from './stress/stage-givens.ts';

/** Losses by conduction at one load of the device, part by part; what feeds no port in use carries nothing and is left out. */
export function conductionAt(entry: Entry, figures: DeviceFigures, at: LoadPoint): readonly LossItem[] {
  const here = stageGivens(entry, { ...figures, power: at.power, input: { ...figures.input, lowLine: at.line }, at });
  return conductionLosses(entry, here).filter(({ stage }) => at.through.has(stage));
}
