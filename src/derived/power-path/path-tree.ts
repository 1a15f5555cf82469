import type { Entry, Stage } from '../../entry/entry.ts';
import { stageOf } from '../../stages/index.ts';
import type { BarrierSide } from './power-path.ts';

/** A stage with the one before it. */
export interface TreeStage {
  readonly stage: Stage;
  readonly from: string | null;
  readonly side: BarrierSide;
}

/**
 * The stages as a tree. A stage hangs on the one that names it in `feeds`, else on the nearest before it that names nobody; several
 * stages that each feed a port so hang side by side on the last common one. Where a pack stands inside, the path begins at the pack.
 */
export function pathTree(entry: Entry): readonly TreeStage[] {
  const stages = fromPackOn(entry.stages).filter((stage, index, all) => all.findIndex(({ id }) => id === stage.id) === index);
  const parents = new Map(stages.map((stage, index) => [stage.id, parentOf(stage, index, stages)]));
  return stages.map((stage) => ({ stage, from: parents.get(stage.id) ?? null, side: sideOf(stage, stages, parents) }));
}

/** The stage whose output a port is; the last one of all where no stage names the port. */
export function feederOf(port: string, tree: readonly TreeStage[]): string | null {
  const naming = tree.find(({ stage }) => stage.feeds.includes(port));
  if (naming !== undefined) return naming.stage.id;
  const open = tree.filter(({ stage }) => stage.feeds.length === 0).at(-1) ?? tree.at(-1);
  return open?.stage.id ?? null;
}

/** A stage and all before it, the nearest first. */
export function upstream(id: string | null, tree: readonly TreeStage[]): readonly string[] {
  const found: string[] = [];
  let at = id;
  while (at !== null && !found.includes(at)) {
    found.push(at);
    const here = at;
    at = tree.find(({ stage }) => stage.id === here)?.from ?? null;
  }
  return found;
}

function fromPackOn(stages: readonly Stage[]): readonly Stage[] {
  const pack = stages.findIndex((stage) => stage.kind === 'battery-pack');
  return pack <= 0 ? stages : stages.slice(pack);
}

/** Only a stage that stands earlier can feed: a circle in `feeds` so cannot close. */
function parentOf(stage: Stage, index: number, stages: readonly Stage[]): string | null {
  const before = stages.slice(0, index).filter(({ id }) => id !== stage.id);
  const naming = before.find((other) => other.feeds.includes(stage.id));
  const open = before.filter((other) => other.feeds.length === 0).at(-1);
  return (naming ?? open)?.id ?? null;
}

function sideOf(stage: Stage, stages: readonly Stage[], parents: ReadonlyMap<string, string | null>): BarrierSide {
  const isBarrier = (id: string): boolean => stageOf(stages.find((other) => other.id === id)?.kind ?? '')?.side === 'barrier';
  if (!stages.some((other) => isBarrier(other.id))) return 'none';
  if (isBarrier(stage.id)) return 'barrier';
  const seen = new Set<string>();
  let at = parents.get(stage.id) ?? null;
  while (at !== null && !seen.has(at)) {
    if (isBarrier(at)) return 'secondary';
    seen.add(at);
    at = parents.get(at) ?? null;
  }
  return 'primary';
}
