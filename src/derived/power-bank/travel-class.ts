import { LITHIUM_TRAVEL } from '../../standards/lithium-travel.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { TravelClass } from './power-bank-figures.ts';
import { JOULES_PER_WATT_HOUR } from '../../units/watt-hour.ts';

/** 27 027 mAh at 3.7 V are 99.9999 Wh: what is printed as 100 Wh is 100 Wh. */
const ROUNDING = 1e-4;

/** Where an energy stands to the limits for passengers; an interval over a limit stands at it. */
export function travelClass(energy: Known<'energy'>): TravelClass {
  if (isMissing(energy)) return 'not known';
  const [low, high] = [energy.low / JOULES_PER_WATT_HOUR, energy.high / JOULES_PER_WATT_HOUR];
  const { freeUpTo, approvedUpTo } = LITHIUM_TRAVEL;
  const isUpTo = (wattHours: number, limit: number): boolean => wattHours <= limit * (1 + ROUNDING);
  if (isUpTo(high, freeUpTo)) return 'free';
  if (isUpTo(low, freeUpTo)) return 'at the limit';
  if (isUpTo(high, approvedUpTo)) return 'with approval';
  return isUpTo(low, approvedUpTo) ? 'at the limit' : 'not carried';
}
