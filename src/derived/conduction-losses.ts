import type { Entry, Part, Stage } from '../entry/entry.ts';
import { conductionLoss } from '../formulas/loss/conduction-loss.ts';
import { forwardDropLoss } from '../formulas/loss/forward-drop-loss.ts';
import { hotResistance } from '../formulas/loss/hot-resistance.ts';
import { parallelPartsResistance } from '../formulas/loss/parallel-parts-resistance.ts';
import { resistiveLoss } from '../formulas/loss/resistive-loss.ts';
import { turnTakingResistance } from '../formulas/loss/turn-taking-resistance.ts';
import { bridgeLoss } from '../formulas/pfc/bridge-loss.ts';
import { CUSTOMARY, type CustomaryValue } from '../standards/customary-values.ts';
import { stageOf } from '../stages/index.ts';
import { bridgeCurrent } from '../stages/models/bus-side.ts';
import { rectifierDrop } from '../stages/models/secondary-side.ts';
import type { RoleCurrent, StageGiven } from '../stages/models/stage-model.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { assume } from '../values/assume.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { isMissing, type Known } from '../values/value.ts';
import { sumOfPowers } from '../formulas/energy/sum-of-powers.ts';
import type { LossItem } from './derived.ts';
import { assumed } from './fact-value.ts';
import { countBeyondBelief, isFitted, pieces } from './fitted-parts.ts';
import { partClassOf } from './part-class.ts';
import { measuredOf, quantitiesOf, ratingOf } from './part-rating.ts';
import { converterOf, PASSING_KINDS, stageById } from './stage-kinds.ts';
import { partHint } from './stress/part-hint.ts';
import type { StageGivens } from './stress/stage-givens.ts';

/** Losses by conduction of switches, chokes, bridge and output diodes, at the corner that the givens stand for. */
export function conductionLosses(entry: Entry, givens: StageGivens): readonly LossItem[] {
  return entry.parts.filter(isFitted).flatMap((part) => lossOf(entry, part, givens));
}

function lossOf(entry: Entry, part: Part, givens: StageGivens): readonly LossItem[] {
  const stage = carrierOf(entry, part);
  if (stage === null) return [];
  const given = givens(stage);
  if (part.role === 'bridge-rectifier') return [item(part, 'conduction loss of the bridge', bridge(given))];
  if (part.role === 'rectifier-diode' && stageOf(stage.kind)?.side === 'barrier') {
    return [item(part, 'loss of the forward drop', diode(given))];
  }
  const carried = stageOf(stage.kind)?.model?.rms?.[part.role]?.(given, partHint(part));
  if (carried === undefined || !hasResistance(part)) return [];
  const other = carried.carrying < carried.places ? turnTaker(entry, part) : null;
  if (other === null) return [item(part, 'conduction loss', switchLoss(part, carried))];
  // The pair is one item, at its first key.
  return entry.parts.indexOf(other) < entry.parts.indexOf(part) && other.role === part.role ? [] : [pairItem(part, other, carried)];
}

function hasResistance(part: Part): boolean {
  return quantitiesOf(part, 'resistance').length > 0 || measuredOf(part, 'resistance') !== null;
}

/** The switch under a key of its own that carries while this one does not; null where one key holds both, or nothing is known of the other. */
function turnTaker(entry: Entry, part: Part): Part | null {
  if (pieces(part) !== 1) return null;
  const others = entry.parts.filter(
    (other) =>
      other !== part &&
      other.stage === part.stage &&
      isFitted(other) &&
      hasResistance(other) &&
      pieces(other) === 1 &&
      (other.role === part.role || other.role === 'synchronous-rectifier'),
  );
  const [only, ...more] = others;
  return only === undefined || more.length > 0 ? null : only;
}

/** Which of the two carries how long depends on input and output: the loss lies between all in the one and all in the other. */
function pairItem(part: Part, other: Part, { current }: RoleCurrent): LossItem {
  const hot = (one: Part): Known<'resistance'> =>
    applyFormula(hotResistance, { factor: assumed('ratio', hotFactor(one)), resistance: resistanceOf(one) });
  const resistance = applyFormula(turnTakingResistance, {
    first: hot(part),
    second: hot(other),
    share: assumed('ratio', CUSTOMARY.turnTaking),
  });
  return {
    stage: part.stage,
    references: [...part.references, ...other.references],
    name: 'conduction loss',
    loss: applyFormula(resistiveLoss, { current, resistance }),
  };
}

function resistanceOf(part: Part): Known<'resistance'> {
  return measuredOf(part, 'resistance') ?? ratingOf(part, 'resistance');
}

/** A synchronous rectifier in a block that passes power on carries what the converter before it gives. */
function carrierOf(entry: Entry, part: Part): Stage | null {
  const stage = stageById(entry, part.stage);
  return stage !== null && PASSING_KINDS.includes(stage.kind) ? converterOf(entry, part.stage) : stage;
}

function item(part: Part, name: string, loss: Known<'power'>): LossItem {
  return { stage: part.stage, references: part.references, name, loss };
}

/** Loss of all parts of a key: those of one place side by side, and each place that carries counted once. */
function switchLoss(part: Part, { current, places, carrying }: RoleCurrent): Known<'power'> {
  const named = pieces(part);
  const beyond = countBeyondBelief(part);
  if (beyond !== null) return beyond;
  const one = resistanceOf(part);
  const sideBySide = Math.max(1, Math.round(named / places));
  const source = { title: 'The entry itself', section: part.path.join('.'), standing: 'read' } as const;
  const count = assume('ratio', sideBySide, sideBySide, sideBySide, `${sideBySide} side by side, as counted`, source);
  const resistance = sideBySide === 1 ? one : applyFormula(parallelPartsResistance, { resistance: one, count });
  const ofPlace = applyFormula(conductionLoss, { current, factor: assumed('ratio', hotFactor(part)), resistance });
  const all = Array.from({ length: Math.min(carrying, named) }, () => ofPlace);
  return foldFormula(all, (first, second) => applyFormula(sumOfPowers, { first, second }), 'loss');
}

/** Rated voltage from which silicon switches are of the superjunction kind, whose resistance rises most when hot. */
const SUPERJUNCTION_FROM = 400;

function hotFactor(part: Part): CustomaryValue {
  if (partClassOf(part) === 'magnetic') return CUSTOMARY.coldCopper;
  if (/gan|gallium/iu.test(part.technology ?? '')) return CUSTOMARY.coldGallium;
  if (/\bsic\b|silicon.carbide/iu.test(part.technology ?? '')) return CUSTOMARY.coldSiliconCarbide;
  const rated = ratingOf(part, 'voltage', 'DC');
  return !isMissing(rated) && rated.nominal >= SUPERJUNCTION_FROM ? CUSTOMARY.coldSuperjunction : CUSTOMARY.coldLowVoltage;
}

function bridge(given: StageGiven): Known<'power'> {
  return applyFormula(bridgeLoss, { current: bridgeCurrent(given), drop: assumed('voltage', CUSTOMARY.bridgeDrop) });
}

function diode(given: StageGiven): Known<'power'> {
  const [point] = given.output.points.slice(-1);
  const current = point?.current ?? { missing: true, reason: `output of ${given.id} not known`, needs: [`output of ${given.id}`] };
  return applyFormula(forwardDropLoss, { current, drop: rectifierDrop(given, true) });
}
