import type { Entry } from '../entry/entry.ts';
import { stageOf } from '../stages/index.ts';
import { PFC_KINDS } from './stage-kinds.ts';

/** Family of an entry that describes no converter. */
const UNKNOWN_FAMILY = 'topology-not-described';

/**
 * kebab-case id of the topology family: the PFC and the isolated converters, in the order power flows; for devices without
 * isolation every converter that has a short name. How many converters follow for single ports does not make a family.
 */
export function familyId(entry: Entry): string {
  const kinds = entry.stages.map((stage) => stage.kind);
  const isolated = kinds.filter((kind) => PFC_KINDS.includes(kind) || stageOf(kind)?.side === 'barrier');
  const hasBarrier = isolated.some((kind) => stageOf(kind)?.side === 'barrier');
  const telling = hasBarrier ? isolated : kinds.filter((kind) => kind !== 'rectifier' && (stageOf(kind)?.short ?? null) !== null);
  return telling.length === 0 ? UNKNOWN_FAMILY : [...new Set(telling)].join('-');
}
