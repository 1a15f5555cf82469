import type { Part } from '../entry/entry.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity, Rating } from '../units/quantity.ts';
import { valueOf } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';

/**
 * What a part is rated for in one dimension: the first such quantity of its rating. A rating given as a lower bound ("> 35 V")
 * is taken at the bound, the least that the part stands.
 *
 * @param waveform where the rating must be for alternating (AC) or must not be (DC); null where it does not matter
 */
export function ratingOf<D extends Dimension>(part: Part, dimension: D, waveform: 'AC' | 'DC' | null = null): Known<D> {
  const names = part.references.join(', ');
  const transient = transientQuantity(part);
  const listed = quantitiesOf(part, dimension).filter((quantity) => quantity.span !== transient?.span);
  const found = listed.find((quantity) => waveform === null || (quantity.waveform === 'AC') === (waveform === 'AC'));
  if (found === undefined) {
    return missing(`${names}: ${wanted(dimension, waveform)} not known${instead(listed)}`, [`${dimension} rating of ${names}`]);
  }
  const isLowerBound = found.bound === 'at least' || found.bound === 'above';
  return valueOf({ ...part.madeBy, quantity: found, evidence: part.evidence }, part.path.join('.'), {
    bound: isLowerBound ? 'use' : 'refuse',
  });
}

/** Voltage that a part stands for moments only, where its rating says so: "650 V (750 V transient)". Null where it says none. */
export function transientRatingOf(part: Part): Known<'voltage'> | null {
  const found = transientQuantity(part);
  return found === null
    ? null
    : valueOf({ ...part.madeBy, quantity: found, evidence: part.evidence }, part.path.join('.'), { bound: 'use' });
}

/** Words for a rating of moments; they stand right after the number, or right before it. */
const TRANSIENT = /^(?:transient|surge|pulsed?|peak|non-repetitive)$/iu;

function transientQuantity(part: Part): Quantity<'voltage'> | null {
  const marks = part.rating?.marks.filter((mark) => mark.kind === 'word' && TRANSIENT.test(mark.text)) ?? [];
  const voltages = marks.length === 0 ? [] : quantitiesOf(part, 'voltage');
  if (voltages.length < 2) return null;
  return voltages.find((quantity) => marks.some((mark) => isBeside(mark.span, quantity.span))) ?? null;
}

function isBeside(
  word: { readonly start: number; readonly end: number },
  number: { readonly start: number; readonly end: number },
): boolean {
  const gap = word.start >= number.end ? word.start - number.end : number.start - word.end;
  return gap >= 0 && gap <= 1;
}

/** What the part itself measured in one dimension; null where nobody measured it. */
export function measuredOf<D extends Dimension>(part: Part, dimension: D): Known<D> | null {
  const found = ratedQuantities(part.measured, dimension)[0];
  return found === undefined
    ? null
    : valueOf({ ...part.madeBy, quantity: found, evidence: 'measured' }, [...part.path, 'measured'].join('.'));
}

/** Quantities of one dimension in a part's rating, in the order written; conditions ("@ 25 °C") are none. */
export function quantitiesOf<D extends Dimension>(part: Part, dimension: D): readonly Quantity<D>[] {
  return ratedQuantities(part.rating, dimension);
}

function ratedQuantities<D extends Dimension>(rating: Rating | null, dimension: D): readonly Quantity<D>[] {
  return (rating?.quantities ?? []).filter(
    (quantity): quantity is Quantity<D> => quantity.dimension === dimension && quantity.label !== 'at',
  );
}

/** What is marked in its place: 275 VAC say nothing of direct voltage, nor 630 V of alternating. */
function instead(listed: readonly Quantity[]): string {
  const [only] = listed;
  if (only === undefined) return '';
  return only.waveform === 'AC'
    ? `; ${only.written} is for alternating voltage`
    : `; ${only.written} does not say that it is for alternating voltage`;
}

function wanted(dimension: Dimension, waveform: 'AC' | 'DC' | null): string {
  if (waveform === 'AC') return `${dimension} rating for alternating voltage`;
  return `${dimension} rating`;
}
