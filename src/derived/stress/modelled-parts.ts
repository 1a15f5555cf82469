import type { Entry, Part, Stage } from '../../entry/entry.ts';
import { STAGES, stageOf } from '../../stages/index.ts';
import { BUS_SIDE } from '../../stages/models/bus-side.ts';
import type { StageModel, Stress } from '../../stages/models/stage-model.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { StressRow } from '../derived.ts';
import { quantitiesOf, ratingOf } from '../part-rating.ts';
import { converterOf, PASSING_KINDS, stageById } from '../stage-kinds.ts';
import { judgeCurrent, judgeVoltage } from './judge.ts';
import { partHint } from './part-hint.ts';
import type { StageGivens } from './stage-givens.ts';
import type { StressInput } from './stress-input.ts';

/** Roles that some block has a stress for: one of them in a block without a model gets a withheld verdict, and never none. */
const MODELLED: ReadonlySet<string> = new Set(STAGES.flatMap(({ model }) => (model === undefined ? [] : Object.keys(model.stresses))));

/** Rectifiers of a block that only passes power on belong to the converter before it. */
const RECTIFIERS: ReadonlySet<string> = new Set(['synchronous-rectifier', 'rectifier-diode']);

/** Rows of one part: what the model of its stage puts on its role, against what it is rated for. */
export function modelledPart(part: Part, given: StressInput, givens: StageGivens): readonly StressRow[] {
  if (!MODELLED.has(part.role)) return [];
  const stage = ownerOf(part, given.entry);
  if (stage === null) return unplaced(part, given, givens);
  const model = stageOf(stage.kind)?.model;
  if (model === undefined) {
    const name = stageOf(stage.kind)?.name ?? stage.kind;
    return [withheld(part, given, `there is no stress model for a block of the kind ${name}`, 'stage model')];
  }
  return rowsOf(part, model, stage, given, givens);
}

function rowsOf(part: Part, model: StageModel, stage: Stage, given: StressInput, givens: StageGivens): readonly StressRow[] {
  const stresses = model.stresses[part.role]?.(givens(stage), partHint(part)) ?? [];
  return stresses.flatMap((stress) => rowOf(part, stress, given));
}

/** A bulk capacitor or a bridge outside of any described stage still meets the supply. */
function unplaced(part: Part, given: StressInput, givens: StageGivens): readonly StressRow[] {
  if (BUS_SIDE[part.role] === undefined) return [withheld(part, given, `stage ${part.stage} not described`, `stage ${part.stage}`)];
  return rowsOf(part, { stresses: BUS_SIDE, assumes: [], refuses: [] }, ANYWHERE, given, givens);
}

/** Stands for "somewhere on the mains side" where the stage of a part is not described. */
const ANYWHERE: Stage = {
  id: 'the mains side',
  kind: 'input-filter',
  mode: null,
  parameters: {},
  turns: [],
  turnsEvidence: 'assumed',
  turnsRatio: null,
  reset: null,
  cells: null,
  feeds: [],
  alsoStated: [],
  note: null,
  path: ['stages'],
};

function ownerOf(part: Part, entry: Entry): Stage | null {
  const stage = stageById(entry, part.stage);
  if (stage === null || !PASSING_KINDS.includes(stage.kind) || !RECTIFIERS.has(part.role)) return stage;
  return converterOf(entry, part.stage);
}

function rowOf(part: Part, one: Stress, { policy }: StressInput): readonly StressRow[] {
  const { quantity, against, methods } = one;
  const strain = { part, quantity, against, methods };
  if (one.dimension === 'voltage') {
    const rating = ratingOf(part, 'voltage', part.role === 'bridge-rectifier' ? null : 'DC');
    return [judgeVoltage({ ...strain, corner: one.corner, stress: shared(part, one.stress), rating }, policy)];
  }
  // A current is compared where the part has a rating for it; most switches are marked by voltage and resistance alone.
  if (quantitiesOf(part, 'current').length === 0) return [];
  const { stress, corner } = one.at();
  return [judgeCurrent({ ...strain, corner, stress: sharedCurrent(part, stress), rating: ratingOf(part, 'current') }, policy)];
}

/** Parts in series share the voltage as their leakage and balancing resistors decide, which is not known. */
function shared(part: Part, stress: Known<'voltage'>): Known<'voltage'> {
  if (part.arrangement !== 'series' || isMissing(stress)) return stress;
  const names = part.references.join(', ');
  return missing(`${names} stand in series and share the voltage unevenly`, [`voltage across ${names}`]);
}

/** Parts side by side share the current as their resistances decide. */
function sharedCurrent(part: Part, stress: Known<'current'>): Known<'current'> {
  if (part.arrangement !== 'parallel' || isMissing(stress)) return stress;
  const names = part.references.join(', ');
  return missing(`${names} stand side by side and share the current unevenly`, [`current through ${names}`]);
}

function withheld(part: Part, { policy }: StressInput, reason: string, need: string): StressRow {
  return judgeVoltage({ part, quantity: 'voltage', stress: missing(reason, [need]), rating: ratingOf(part, 'voltage', 'DC') }, policy);
}
