import type { Entry } from '../../entry/entry.ts';
import { powerLoss } from '../../formulas/energy/power-loss.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import type { ShareMatrix } from '../../sharing/share-matrix.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { pathInput, type PathInput } from './path-input.ts';
import { pathOutlets } from './path-outlets.ts';
import { pathTree, type TreeStage } from './path-tree.ts';
import type { PathBlock, PathSource, PowerPath } from './power-path.ts';
import { isFitted } from '../fitted-parts.ts';

const NOT_SPLIT = 'not split between stages';

/** The way of the power through an entry's stages; null where no stage is described. */
export function powerPath(entry: Entry, shares: ShareMatrix | null, ratedPower: Known<'power'>): PowerPath | null {
  const tree = pathTree(entry);
  if (tree.length === 0) return null;
  const drawn = pathOutlets(entry, tree, shares, ratedPower);
  const known = pathInput(entry, tree, drawn.outlets);
  const output = totalOf(known);
  const charging = tree.length < entry.stages.length ? ['What charges the pack is not drawn.'] : [];
  return {
    source: sourceOf(entry, tree, known.line),
    blocks: tree.map((stage) => blockOf(entry, tree, stage, known)),
    outlets: known.outlets,
    input: known.input,
    output,
    loss: applyFormula(powerLoss, { input: known.input, output }),
    basis: known.basis,
    set: drawn.note,
    notes: [known.note, ...charging],
  };
}

function sourceOf(entry: Entry, tree: readonly TreeStage[], line: string | null): PathSource {
  if (tree[0]?.stage.kind === 'battery-pack') return { kind: 'battery', name: 'cells', line };
  return entry.nameplate.input?.kind === 'DC' ? { kind: 'direct', name: 'supply', line } : { kind: 'mains', name: 'mains', line };
}

function blockOf(entry: Entry, tree: readonly TreeStage[], { stage, from, side }: TreeStage, known: PathInput): PathBlock {
  const output = isOnlyWay(tree, stage.id, known) ? outputOf(stage.id, known) : missing(NOT_SPLIT);
  const input = inputOf(tree, stage, known);
  return {
    stage: stage.id,
    kind: stage.kind,
    side,
    from,
    input,
    output,
    loss: applyFormula(powerLoss, { input, output }),
    bus: (stage.parameters['bus'] ?? stage.parameters['output'])?.quantity.written ?? null,
    parts: entry.parts.filter((part) => part.stage === stage.id && isFitted(part)).map(({ references, role }) => ({ references, role })),
  };
}

function inputOf(tree: readonly TreeStage[], stage: TreeStage['stage'], known: PathInput): Known<'power'> {
  if (stage.kind === 'battery-pack') return missing('the cells are the source');
  const measured = known.stageInputs.get(stage.id);
  return measured ?? (isFirst(tree, stage.id) ? known.input : missing(NOT_SPLIT));
}

/** Whether a stage gives its power to outlets alone, so that its output is their sum. */
function isOnlyWay(tree: readonly TreeStage[], id: string, known: PathInput): boolean {
  return known.outlets.some(({ from }) => from === id) && !tree.some(({ from }) => from === id);
}

/** Whether the whole input goes into a stage: it is the only one on the source, be that a supply or a pack. */
function isFirst(tree: readonly TreeStage[], id: string): boolean {
  const [root] = tree;
  const source = root?.stage.kind === 'battery-pack' ? root.stage.id : null;
  const first = tree.filter(({ from }) => from === source);
  return first.length === 1 && first[0]?.stage.id === id;
}

function outputOf(id: string, known: PathInput): Known<'power'> {
  return sum(known.outlets.filter(({ from }) => from === id).map(({ power }) => power));
}

function totalOf({ outlets }: PathInput): Known<'power'> {
  return sum(outlets.map(({ power }) => power).filter((power) => !isMissing(power)));
}

function sum(powers: readonly Known<'power'>[]): Known<'power'> {
  return foldFormula(powers, (first, second) => applyFormula(sumOfPowers, { first, second }), 'output power');
}
