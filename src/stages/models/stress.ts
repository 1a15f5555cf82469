import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { Corner, CurrentStress, OutputPoint, StageGiven, VoltageStress } from './stage-model.ts';

/** A voltage that the policy judges. */
export function voltageStress(quantity: string, stress: Known<'voltage'>, corner: string | null = null): VoltageStress {
  return { quantity, dimension: 'voltage', stress, corner, against: 'policy', methods: [] };
}

/** A current that the policy judges. */
export function currentStress(quantity: string, at: () => Corner<'current'>): CurrentStress {
  return { quantity, dimension: 'current', at, against: 'policy', methods: [] };
}

/** A voltage of moments, so that the rating itself is the line. */
export function voltageAgainstRating(quantity: string, stress: Known<'voltage'>, corner: string | null = null): VoltageStress {
  return { ...voltageStress(quantity, stress, corner), against: 'rating' };
}

/** A voltage with the allowance of a published design in it. */
export function voltageWithAllowance(quantity: string, stress: Known<'voltage'>, corner: string | null = null): VoltageStress {
  return { ...voltageStress(quantity, stress, corner), against: 'allowance' };
}

/** The worst of several corners: the highest upper end. A corner that is missing makes the result so, since it could be the worst. */
export function worstCorner<D extends 'voltage' | 'current'>(given: StageGiven, at: (point: OutputPoint) => Known<D>): Corner<D> {
  const { points } = given.output;
  if (points.length === 0) {
    const need = `output of ${given.id}`;
    return { stress: missing(`what ${given.id} gives is not known`, [need]), corner: null };
  }
  let worst: { stress: Known<D>; corner: string } | null = null;
  for (const point of points) {
    const stress = at(point);
    if (isMissing(stress)) return { stress, corner: null };
    if (worst === null || isMissing(worst.stress) || stress.high > worst.stress.high) worst = { stress, corner: `at ${point.name}` };
  }
  return worst ?? { stress: missing('no corner'), corner: null };
}
