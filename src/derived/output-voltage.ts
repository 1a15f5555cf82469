import type { Entry, Port, Stage } from '../entry/entry.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import { edgeValue, isOf } from './fact-value.ts';
import { largest, offeredVoltage } from './offered.ts';
import { PASSING_KINDS, stageById } from './stage-kinds.ts';

/**
 * Highest voltage at the output of a stage: the larger of what the author gives for the stage and what the ports offer that it
 * feeds without another converter between. Missing where it feeds a converter and its own output is not given.
 */
export function outputVoltage(entry: Entry, stage: Stage): Known<'voltage'> {
  const given = stage.parameters['output'];
  const own = isOf(given, 'voltage') ? [edgeValue(given, 'high', given.path.join('.'))] : [];
  const fed = reachOf(entry, stage);
  const offered = fed.ports.map(offeredVoltage);
  if (own.length === 0 && fed.converters.length > 0) return missing(`output voltage of ${stage.id} not given`, [`output of ${stage.id}`]);
  const unknown = own.length === 0 ? offered.find(isMissing) : undefined;
  if (unknown !== undefined) return unknown;
  // Of equals the offer stands: "20 V" of a contract is nominal, as the author's 20 V of a reading is not.
  return largest([...offered, ...own]) ?? missing(`${stage.id} feeds no port whose offers are known`, [`output of ${stage.id}`]);
}

/** What a stage feeds without another converter between, through blocks that only pass voltage on. */
export interface Reach {
  readonly ports: readonly Port[];
  readonly converters: readonly string[];
}

/** Ports that a stage reaches without a converter between, and the converters that it feeds. */
export function reachOf(entry: Entry, stage: Stage): Reach {
  return reach(entry, stage, new Set());
}

function reach(entry: Entry, stage: Stage, seen: Set<string>): Reach {
  if (seen.has(stage.id)) return { ports: [], converters: [] };
  seen.add(stage.id);
  const found = targets(entry, stage).map((target): Reach => {
    const port = entry.ports.find((candidate) => candidate.id === target);
    if (port !== undefined) return { ports: [port], converters: [] };
    const next = stageById(entry, target);
    if (next === null) return { ports: [], converters: [] };
    return PASSING_KINDS.includes(next.kind) ? reach(entry, next, seen) : { ports: [], converters: [next.id] };
  });
  return { ports: found.flatMap((one) => one.ports), converters: found.flatMap((one) => one.converters) };
}

/** What a stage feeds by name, else the next stage, else the output ports that no stage names. */
function targets(entry: Entry, stage: Stage): readonly string[] {
  if (stage.feeds.length > 0) return stage.feeds;
  const next = entry.stages[entry.stages.indexOf(stage) + 1];
  if (next !== undefined) return [next.id];
  const named = new Set(entry.stages.flatMap((other) => other.feeds));
  return entry.ports.filter((port) => port.direction !== 'input' && !named.has(port.id)).map((port) => port.id);
}
