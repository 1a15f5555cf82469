import type { Entry, Stage } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';

/** Kinds of stage that shape the input current and hold a regulated bus. */
export const PFC_KINDS: readonly string[] = ['boost-pfc', 'totem-pole-pfc'];

/** Kinds that pass voltage on without converting it. */
export const PASSING_KINDS: readonly string[] = ['secondary-rectifier', 'port-control'];

/** Whether the device shapes its input current. */
export function hasPfc(entry: Entry): boolean {
  return entry.stages.some((stage) => PFC_KINDS.includes(stage.kind));
}

/** The stage with this name; null where the entry has none. */
export function stageById(entry: Entry, id: string): Stage | null {
  return entry.stages.find((stage) => stage.id === id) ?? null;
}

/** The isolated converter that a stage belongs to: itself, or the nearest one before it. */
export function converterOf(entry: Entry, id: string): Stage | null {
  const place = entry.stages.findIndex((stage) => stage.id === id);
  const upTo = entry.stages.slice(0, place + 1).reverse();
  return upTo.find((stage) => stageOf(stage.kind)?.side === 'barrier') ?? null;
}
