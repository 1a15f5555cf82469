import type { Entry } from '../../entry/entry.ts';
import type { TouchDuration } from '../../standards/touch-temperature.ts';

/**
 * How long the outside is touched in use: a charger is picked up or unplugged, a power bank is carried from place to place.
 * Common practice; the sheet shows the limits of the other times beside it.
 */
export function contactOf({ device }: Entry): TouchDuration {
  return device.kind === 'power bank' ? 'up to a minute' : 'up to ten seconds';
}
