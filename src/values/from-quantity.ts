import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import { missing } from './missing.ts';
import { supportedDigits } from './supported-digits.ts';
import type { Evidence, Known, Origin, Source } from './value.ts';

/** A quantity with the evidence under which it was read; the facts of an entry have this shape. */
export interface QuantityFact<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>;
  readonly evidence: Exclude<Evidence, 'computed'>;
  /** Absent where no instrument of the bench is named. */
  readonly readOn?: ReadOn;
  /** Id of the method of the bench; absent where none is named. */
  readonly method?: string;
}

/** The instrument of the bench that a measured value was read on. */
export interface ReadOn {
  /** Id of the instrument. */
  readonly instrument: string;
  /** Greatest distance of the true value from the reading, in the SI unit; null where no accuracy is stated for the quantity. */
  readonly within: number | null;
  /** The part of it that does not grow with the reading: counts, range, a fixed part; left out where no accuracy is stated. */
  readonly fixed?: number;
}

/** What to make of a writing that gives one side only, such as "≤ 75 mW" or "> 35 V". */
export interface ValueOfOptions {
  /** `refuse` (the default) gives a missing value; `use` takes the written number itself as the value. */
  readonly bound?: 'refuse' | 'use';
}

/**
 * The value of a fact, in SI units, with the interval and the digits that the writing gives it.
 *
 * @param fact what was written and under which evidence
 * @param at data path in the entry, such as "parts.C5.rating"
 * @returns the value, or a missing one where the writing is only a bound and `options` does not say to use it
 */
export function valueOf<D extends Dimension>(fact: QuantityFact<D>, at: string, options: ValueOfOptions = {}): Known<D> {
  const { quantity } = fact;
  const oneSided = quantity.low === null || quantity.high === null;
  if (oneSided && options.bound !== 'use') return missing(`${at} is only known as a bound: ${quantity.written}`, [at]);
  // What the writing leaves open and what the instrument leaves open add up: "20.0 ± 0.1 V" off a meter good for 0.05 V is ± 0.15 V.
  const within = oneSided ? 0 : (fact.readOn?.within ?? 0);
  const low = (oneSided ? quantity.nominal : Math.min(quantity.low, quantity.nominal)) - within;
  const high = (oneSided ? quantity.nominal : Math.max(quantity.high, quantity.nominal)) + within;
  if (![low, quantity.nominal, high].every(Number.isFinite)) return missing(`${at} is not a finite number: ${quantity.written}`, [at]);
  const significant = Math.max(1, Math.min(quantity.significant, supportedDigits(low, quantity.nominal, high)));
  return {
    dimension: quantity.dimension,
    low,
    nominal: quantity.nominal,
    high,
    significant,
    origin: benchOrigin(writtenOrigin(fact.evidence, quantity.written, at), fact),
  };
}

/** Origin of something that stands in an entry; what its author assumed has the entry itself as its source. */
export function writtenOrigin(evidence: QuantityFact['evidence'], written: string, at: string): Origin {
  if (evidence !== 'assumed') return { evidence, written, at };
  return { evidence, reason: `${written}, assumed by the author at ${at}`, source: authorsAssumption(at) };
}

function benchOrigin(origin: Origin, { readOn, method }: Pick<QuantityFact, 'readOn' | 'method'>): Origin {
  if (origin.evidence !== 'measured') return origin;
  return {
    ...origin,
    ...(readOn === undefined ? {} : { instrument: readOn.instrument }),
    ...(method === undefined ? {} : { method }),
  };
}

function authorsAssumption(at: string): Source {
  return { title: 'The entry itself, marked as assumed', section: at, standing: 'memory' };
}
