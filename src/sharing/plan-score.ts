/** How good a plan is, the first number first; each is better when larger. */
export interface PlanScore {
  /** Needs met in full. */
  readonly met: number;
  /** Devices that get any power. */
  readonly powered: number;
  /** The smallest fraction of its need that a device with power gets; 0 where none has. */
  readonly worst: number;
  /** Watts of all devices together. */
  readonly total: number;
}

/** Sums of binary fractions that differ by less are the same number. */
const SAME = 1e-9;

const NEEDS_FIRST: readonly (keyof PlanScore)[] = ['met', 'powered', 'worst', 'total'];
const DEVICES_FIRST: readonly (keyof PlanScore)[] = ['powered', 'met', 'worst', 'total'];

/**
 * Compares two plans: as many needs met as can be, then as many devices with power, then the worst-off of these, then the sum.
 * Where every device can have power, this is: needs met, the worst-off device's share, the sum.
 *
 * @returns above 0 where `one` is better, 0 where they are equal
 */
export function compareScores(one: PlanScore, other: PlanScore): number {
  return compareBy(NEEDS_FIRST, one, other);
}

/** The same with as many devices with power as can be before all else. */
export function compareWithAllPlugged(one: PlanScore, other: PlanScore): number {
  return compareBy(DEVICES_FIRST, one, other);
}

function compareBy(order: readonly (keyof PlanScore)[], one: PlanScore, other: PlanScore): number {
  for (const aim of order) {
    const difference = one[aim] - other[aim];
    if (Math.abs(difference) > SAME) return difference;
  }
  return 0;
}
