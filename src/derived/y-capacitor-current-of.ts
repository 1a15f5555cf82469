import type { Entry } from '../entry/entry.ts';
import { yCapacitorCurrent } from '../formulas/capacitor/y-capacitor-current.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { capacitorBank } from './capacitor-bank.ts';
import type { InputFigures } from './derived.ts';
import { edgeValue } from './fact-value.ts';
import { fittedParts } from './fitted-parts.ts';
import { largest } from './offered.ts';
import { ratingOf } from './part-rating.ts';
import { INPUT_AT } from './supply-lines.ts';

/** Current that the Y capacitors pass at the highest line and the highest printed frequency. An indication, never a touch-current test. */
export function yCapacitorCurrentOf(entry: Entry, input: InputFigures): Known<'current'> {
  const { nameplate } = entry;
  if (nameplate.input?.kind !== 'AC') return missing('no mains input printed');
  return applyFormula(yCapacitorCurrent, { frequency: yFrequencyOf(entry), capacitance: yCapacitanceOf(entry), voltage: input.highLine });
}

/** Capacitance of all Y capacitors together; missing where none is among the parts. */
export function yCapacitanceOf(entry: Entry): Known<'capacitance'> {
  const parts = fittedParts(entry, 'y-capacitor');
  if (parts.length === 0) return missing('no Y capacitor among the parts', ['Y capacitor']);
  return capacitorBank(parts, (part) => ratingOf(part, 'capacitance'), 'Y capacitance');
}

/** The highest printed line frequency, at which the most current passes. */
export function yFrequencyOf({ nameplate }: Entry): Known<'frequency'> {
  if (nameplate.input?.kind !== 'AC') return missing('no mains input printed');
  const frequencies = nameplate.input.frequencies.map((quantity) =>
    edgeValue({ quantity, evidence: nameplate.evidence }, 'high', INPUT_AT),
  );
  return largest(frequencies) ?? missing('no frequency printed', ['line frequency']);
}
