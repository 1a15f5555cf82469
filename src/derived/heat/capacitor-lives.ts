import type { Entry, Part } from '../../entry/entry.ts';
import { capacitorLife } from '../../formulas/life/capacitor-life.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { factValue, isOf } from '../fact-value.ts';
import { isFitted } from '../fitted-parts.ts';
import { ratingOf } from '../part-rating.ts';
import type { CapacitorLife } from './heat-figures.ts';
import { partAtPlace } from './part-at-place.ts';

/** Roles that electrolytic capacitors stand in. */
const ROLES: readonly string[] = ['bulk-capacitor', 'output-capacitor', 'input-capacitor', 'supply-capacitor'];

/** Life of each capacitor that a temperature was measured on, by the rule of 10 K; empty where none was. */
export function capacitorLives(entry: Entry): readonly CapacitorLife[] {
  const parts = entry.parts.filter((part) => ROLES.includes(part.role) && isFitted(part));
  return entry.measurements.flatMap((point) => {
    if (point.subject !== 'thermal' || !isOf(point.value, 'temperature')) return [];
    const part = partAtPlace(parts, point.place ?? '');
    if (part === null) return [];
    const temperature = factValue(point.value, { bound: 'use' });
    return [{ references: part.references, temperature, life: lifeOf(part, temperature) }];
  });
}

function lifeOf(part: Part, temperature: Known<'temperature'>): Known<'time'> {
  return applyFormula(capacitorLife, { rated: ratingOf(part, 'time'), ratedTemperature: ratingOf(part, 'temperature'), temperature });
}
