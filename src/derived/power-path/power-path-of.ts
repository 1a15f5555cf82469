import type { Entry } from '../../entry/entry.ts';
import { powerLoss } from '../../formulas/energy/power-loss.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { conductionAt } from '../conduction-at.ts';
import type { LossItem } from '../derived.ts';
import type { DeviceFigures } from '../stress/stage-given.ts';
import { pathInput, type PathInput } from './path-input.ts';
import { pathLoad } from './path-load.ts';
import { pathOutlets } from './path-outlets.ts';
import { pathTree, type TreeStage } from './path-tree.ts';
import type { PathBlock, PathConduction, PathSource, PowerPath } from './power-path.ts';
import { isFitted } from '../fitted-parts.ts';

const NOT_SPLIT = 'not split between stages';

/** The way of the power through an entry's stages; null where no stage is described. */
export function powerPath(entry: Entry, figures: DeviceFigures): PowerPath | null {
  const { shares, power: ratedPower } = figures;
  const tree = pathTree(entry);
  if (tree.length === 0) return null;
  const drawn = pathOutlets(entry, tree, shares, ratedPower);
  const known = pathInput(entry, tree, drawn.outlets);
  const output = totalOf(known);
  const at = pathLoad(entry, known);
  const conduction = at === null ? [] : conductionAt(entry, figures, at);
  const charging = tree.length < entry.stages.length ? ['What charges the pack is not drawn.'] : [];
  return {
    source: sourceOf(entry, tree, known.line?.quantity.written ?? null),
    blocks: tree.map((stage) => blockOf(entry, tree, stage, known, conduction)),
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

function blockOf(
  entry: Entry,
  tree: readonly TreeStage[],
  { stage, from, side }: TreeStage,
  known: PathInput,
  conduction: readonly LossItem[],
): PathBlock {
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
    conduction: conductionOf(conduction.filter((item) => item.stage === stage.id)),
    bus: (stage.parameters['bus'] ?? stage.parameters['output'])?.quantity.written ?? null,
    parts: entry.parts.filter((part) => part.stage === stage.id && isFitted(part)).map(({ references, role }) => ({ references, role })),
  };
}

/** What of a stage's parts can be worked out; null where it names none that could be. */
function conductionOf(items: readonly LossItem[]): PathConduction | null {
  if (items.length === 0) return null;
  const known = items.filter(({ loss }) => !isMissing(loss));
  const unknown = items.flatMap(({ references, loss }) => (isMissing(loss) ? [{ references, reason: loss.reason }] : []));
  return {
    loss:
      known.length === 0
        ? missing(unknown[0]?.reason ?? NOT_SPLIT)
        : sumOfPowersOf(
            known.map(({ loss }) => loss),
            'conduction loss',
          ),
    references: known.flatMap(({ references }) => references),
    unknown,
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
  return sumOfPowersOf(
    known.outlets.filter(({ from }) => from === id).map(({ power }) => power),
    'output power',
  );
}

function totalOf({ outlets }: PathInput): Known<'power'> {
  return sumOfPowersOf(
    outlets.map(({ power }) => power).filter((power) => !isMissing(power)),
    'output power',
  );
}

function sumOfPowersOf(powers: readonly Known<'power'>[], what: string): Known<'power'> {
  return foldFormula(powers, (first, second) => applyFormula(sumOfPowers, { first, second }), what);
}
