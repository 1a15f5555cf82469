import type { Entry, Part } from '../entry/entry.ts';
import { parallelCapacitance } from '../formulas/capacitor/parallel-capacitance.ts';
import { seriesCapacitance } from '../formulas/capacitor/series-capacitance.ts';
import { yCapacitorCurrent } from '../formulas/capacitor/y-capacitor-current.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import type { InputFigures } from './derived.ts';
import { edgeValue } from './fact-value.ts';
import { fittedParts, pieces } from './fitted-parts.ts';
import { largest } from './offered.ts';
import { ratingOf } from './part-rating.ts';

type Capacitance = Known<'capacitance'>;

/** Current that the Y capacitors pass at the highest line and the highest printed frequency. An indication, never a touch-current test. */
export function yCapacitorCurrentOf(entry: Entry, input: InputFigures): Known<'current'> {
  const supply = entry.nameplate.input;
  if (supply?.kind !== 'AC') return missing('no mains input printed');
  const parts = fittedParts(entry, 'y-capacitor');
  if (parts.length === 0) return missing('no Y capacitor among the parts', ['Y capacitor']);
  const frequencies = supply.frequencies.map((quantity) => edgeValue({ quantity, evidence: 'printed' }, 'high', 'nameplate.input'));
  const frequency = largest(frequencies) ?? missing('no frequency printed', ['line frequency']);
  const capacitance = foldFormula(parts.map(capacitanceOfKey), inParallel, 'Y capacitance');
  return applyFormula(yCapacitorCurrent, { frequency, capacitance, voltage: input.highLine });
}

function capacitanceOfKey(part: Part): Capacitance {
  const one = ratingOf(part, 'capacitance');
  const all = Array.from({ length: Math.min(pieces(part), 64) }, () => one);
  return foldFormula(all, part.arrangement === 'series' ? inSeries : inParallel, 'Y capacitance');
}

function inParallel(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(parallelCapacitance, { first, second });
}

function inSeries(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(seriesCapacitance, { first, second });
}
