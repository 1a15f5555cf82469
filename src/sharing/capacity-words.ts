import type { Capacity } from './capacity-of.ts';
import { wattsInWords } from './watts-in-words.ts';

/** Assured or shared capacity by its name, with what the limits and the total say; never a reproach where limits rightly exceed it. */
export function capacitySentence({ kind, isStated, limits, total }: Capacity): string {
  const sum = limits === null ? '' : ` The ports’ own limits add up to ${wattsInWords(limits.nominal)}`;
  const whole = total === null ? '' : ` of ${wattsInWords(total.nominal)}`;
  if (kind === 'assured')
    return `Assured capacity: every port keeps its limit whatever the others do.${sum === '' ? '' : `${sum}${whole}.`}`;
  if (kind === null) return 'Whether every port keeps its limit or they share one total is not stated.';
  const over = limits === null || total === null ? 0 : limits.nominal - total.nominal;
  const excess = over > 0.05 ? `, ${wattsInWords(over)} more than that, as they may` : '';
  return `Shared capacity${isStated ? '' : ', by the numbers'}: the ports draw on one total${whole}.${sum === '' ? '' : `${sum}${excess}.`}`;
}
