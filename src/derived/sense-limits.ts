import type { Entry, Part, Stage } from '../entry/entry.ts';
import { parallelResistance } from '../formulas/resistor/parallel-resistance.ts';
import { seriesResistance } from '../formulas/resistor/series-resistance.ts';
import { senseLimitCurrent } from '../formulas/sense/sense-limit-current.ts';
import { CUSTOMARY } from '../standards/customary-values.ts';
import { stageOf } from '../stages/index.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import type { OperatingFigure } from './derived.ts';
import { assumed } from './fact-value.ts';
import { fittedParts, perPiece, pieces } from './fitted-parts.ts';
import { measuredOf, ratingOf } from './part-rating.ts';
import { partHint } from './stress/part-hint.ts';
import type { StageGivens } from './stress/stage-givens.ts';

type Ohms = Known<'resistance'>;
type Limits = readonly Omit<OperatingFigure, 'stage'>[];

const ROLE = 'current-sense-resistor';

/**
 * Peaks at which the current-sense resistors of a stage trip. Several in parallel or in series are one; several that stand separately, one
 * for each phase or port, have a limit each; where nobody says which, the limit is withheld. Behind the barrier only with a given
 * threshold, since none is usual there.
 */
export function senseLimits(entry: Entry, stage: Stage, givens: StageGivens): Limits {
  const side = stageOf(stage.kind)?.side;
  const parts = senseResistorsOf(entry, stage);
  const given = parts.length === 0 ? null : givens(stage).parameter('sense threshold', 'voltage', 'high');
  const threshold = given ?? (side === 'primary' || side === 'barrier' ? assumed('voltage', CUSTOMARY.senseThreshold) : null);
  if (threshold === null) return [];
  return resistances(parts, stage).map(({ name, value }) => ({
    name,
    value: applyFormula(senseLimitCurrent, { threshold, resistance: value }),
  }));
}

/** Sense resistors of a stage; across the barrier, those at the output measure another current and are left out. */
export function senseResistorsOf(entry: Entry, stage: Stage): readonly Part[] {
  const isBarrier = stageOf(stage.kind)?.side === 'barrier';
  return fittedParts(entry, ROLE).filter((part) => part.stage === stage.id && !(isBarrier && isAtOutput(part)));
}

function isAtOutput(part: Part): boolean {
  return partHint(part).side === 'output' || /\bsecondary\b/iu.test(part.note ?? '');
}

/** How several sense resistors of a stage belong together; null where nobody says so. */
export function senseArrangement(parts: readonly Part[]): Part['arrangement'] | null {
  const [first, ...rest] = parts;
  if (first === undefined) return null;
  const isOne = rest.length === 0 && pieces(first) === 1;
  if (isOne) return 'single';
  return first.arrangement !== 'single' && rest.every((part) => part.arrangement === first.arrangement) ? first.arrangement : null;
}

interface Sensed {
  readonly name: string;
  readonly value: Ohms;
}

function resistances(parts: readonly Part[], stage: Stage): readonly Sensed[] {
  const [first] = parts;
  if (first === undefined) return [];
  const arrangement = senseArrangement(parts);
  const names = parts.flatMap(({ references }) => references).join(', ');
  if (arrangement === 'single') return [{ name: 'current limit of the sense resistor', value: resistance(first) }];
  if (arrangement === null) {
    const reason = `whether ${names} of ${stage.id} stand in parallel, in series or separately is not said`;
    return [{ name: 'current limit of the sense resistors', value: missing(reason, [`arrangement of ${names}`]) }];
  }
  if (arrangement === 'separate') {
    return parts.map((part) => ({ name: `current limit of ${part.references.join(', ')}, each for itself`, value: resistance(part) }));
  }
  const combine = arrangement === 'series' ? seriesResistance : parallelResistance;
  const all = parts.flatMap((part) => perPiece(part, resistance(part)));
  const value = foldFormula(all, (one, other) => applyFormula(combine, { first: one, second: other }), 'sense resistor');
  return [{ name: `current limit of ${names} in ${arrangement}`, value }];
}

function resistance(part: Part): Ohms {
  return measuredOf(part, 'resistance') ?? ratingOf(part, 'resistance');
}
