import type { Part } from '../../entry/entry.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import type { StressRow } from '../derived.ts';
import { fittedParts } from '../fitted-parts.ts';
import { ratingOf } from '../part-rating.ts';
import { judgeVoltage } from './judge.ts';
import type { StressInput } from './stress-input.ts';

/** Parts across the primary bus: bulk capacitors, and the switch and diode of a boost PFC. */
export function busParts(given: StressInput): readonly StressRow[] {
  const { entry, bus, policy } = given;
  return [
    ...fittedParts(entry, 'pfc-switch').map((part) => rowOf(part, 'off-state voltage', bus)),
    ...fittedParts(entry, 'pfc-diode').map((part) => rowOf(part, 'reverse voltage', bus)),
    ...fittedParts(entry, 'bulk-capacitor').map((part) => rowOf(part, 'voltage', shared(part, bus))),
  ];

  function rowOf(part: Part, quantity: string, stress: Known<'voltage'>): StressRow {
    return judgeVoltage({ part, quantity, stress, rating: ratingOf(part, 'voltage', 'DC') }, policy);
  }
}

/** Capacitors in series share the voltage as their leakage and balancing resistors decide, which is not known. */
function shared(part: Part, bus: Known<'voltage'>): Known<'voltage'> {
  if (part.arrangement !== 'series') return bus;
  const names = part.references.join(', ');
  return missing(`${names} stand in series and share the bus unevenly`, [`voltage across ${names}`]);
}
