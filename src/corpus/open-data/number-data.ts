import type { EntryEvidence, Fact } from '../../entry/entry.ts';
import { SI_UNITS } from '../../units/dimension.ts';
import type { Quantity } from '../../units/quantity.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import type { DeviceData, NumberData } from './device-schema.ts';

/** A written quantity as data. */
export function quantityData(quantity: Quantity, evidence: EntryEvidence): NumberData {
  const { low, nominal, high, significant, dimension, written } = quantity;
  return {
    value: plain(nominal),
    low: low === null ? null : plain(low),
    high: high === null ? null : plain(high),
    unit: SI_UNITS[dimension],
    significant,
    evidence,
    written,
  };
}

/** A fact of an entry as data; null where the entry has none. */
export function factData(fact: Fact | null): NumberData | null {
  return fact === null ? null : quantityData(fact.quantity, fact.evidence);
}

/** A derived value as data, with everything that went into it; a missing one with its reason. */
export function knownData(known: Known): DeviceData['derived'][string] {
  return isMissing(known) ? { missing: known.reason, needs: [...known.needs] } : valueData(known);
}

function valueData({ dimension, low, nominal, high, significant, origin }: Value): NumberData {
  const number = {
    value: plain(nominal),
    low: plain(low),
    high: plain(high),
    unit: SI_UNITS[dimension],
    significant,
    evidence: origin.evidence,
  };
  if (origin.evidence === 'assumed') return { ...number, reason: origin.reason };
  if (origin.evidence !== 'computed') return { ...number, written: origin.written };
  const inputs = Object.fromEntries(Object.entries(origin.inputs).map(([symbol, input]) => [symbol, valueData(input)]));
  return { ...number, formula: origin.formula, inputs };
}

/** Without the digits beyond the twelfth, which only binary arithmetic adds. */
function plain(number: number): number {
  return Number(number.toPrecision(12));
}
