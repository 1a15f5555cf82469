import type { Entry } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';

/** Maker and name, the name by which a reader knows the device. */
export function deviceName(entry: Entry): string {
  return entry.device.name.startsWith(entry.device.maker) ? entry.device.name : `${entry.device.maker} ${entry.device.name}`;
}

/** Stage kinds of an entry in the order power flows. */
export function stageKinds(entry: Entry): readonly string[] {
  return entry.stages.map((stage) => stage.kind).filter((kind) => stageOf(kind) !== null);
}
