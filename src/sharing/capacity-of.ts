import type { Entry } from '../entry/entry.ts';
import type { Value } from '../values/value.ts';
import { powerValue, sumOfPowers } from './power-value.ts';
import { outputPorts, totalPower } from './set-rows.ts';

/** How the ports' own limits and the total belong together. */
export interface Capacity {
  /**
   * assured: every port keeps its limit whatever the others do, so the limits add up to the total at most.
   * shared: the ports draw on one total, so the limits may add up to more. Both terms: Texas Instruments SLVAFG6B (2024),
   * sections 3.2 and 5.2. null where neither the author nor the numbers say which.
   */
  readonly kind: 'assured' | 'shared' | null;
  /** Whether the author says so; else it follows from limits that add up to more than the total. */
  readonly isStated: boolean;
  /** Sum of the ports' own limits; null where a limit is not given. */
  readonly limits: Value<'power'> | null;
  readonly total: Value<'power'> | null;
}

/** Printed powers round, so a sum has to be above the total by more than this to mean anything. */
const ROUNDING = 0.01;

/** Capacity of a device by what its author says, or by its numbers. */
export function capacityOf(entry: Entry): Capacity {
  const total = totalPower(entry);
  const limits = sumOfLimits(entry);
  const policy = entry.sharing?.policy ?? null;
  const exceeds = limits !== null && total !== null && limits.low > total.high * (1 + ROUNDING);
  return { kind: policy ?? (exceeds ? 'shared' : null), isStated: policy !== null, limits, total };
}

function sumOfLimits(entry: Entry): Value<'power'> | null {
  const limits = outputPorts(entry).map(({ power }) =>
    power === null ? null : powerValue(power.quantity, power.evidence, power.path.join('.'), power),
  );
  const known = limits.filter((limit) => limit !== null);
  const [first, ...rest] = known;
  return first === undefined || known.length < limits.length ? null : sumOfPowers([first, ...rest]);
}
