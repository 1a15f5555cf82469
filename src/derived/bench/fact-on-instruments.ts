import type { Instrument } from '../../entry/bench.ts';
import type { Fact } from '../../entry/entry.ts';
import { readingUncertainty } from './reading-uncertainty.ts';

/** A measured fact with the instrument that it was read on: of several the first that states an accuracy for its quantity. */
export function factOn<F extends Fact | null>(fact: F, instruments: readonly Instrument[]): F {
  if (fact === null || fact.evidence !== 'measured') return fact;
  const { quantity } = fact;
  for (const instrument of instruments) {
    const accuracy = instrument.accuracies.find((each) => each.quantity === quantity.dimension);
    if (accuracy === undefined) continue;
    const within = readingUncertainty(accuracy, quantity.nominal, quantity.resolution);
    const fixed = readingUncertainty(accuracy, 0, quantity.resolution);
    return { ...fact, readOn: { instrument: instrument.id, within, fixed } };
  }
  const [only] = instruments;
  // Of several instruments without a word on the quantity nobody can say which one it was.
  return only === undefined || instruments.length > 1 ? fact : { ...fact, readOn: { instrument: only.id, within: null } };
}
