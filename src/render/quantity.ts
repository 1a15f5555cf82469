import { escapeText } from '../figures/markup.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { restsOnAssumption } from '../values/trace.ts';
import { numberInUnit } from '../tables/number-in-unit.ts';
import { fixedNumber } from './fixed-number.ts';

export { fixedNumber } from './fixed-number.ts';

/** How a value is to be shown. */
export interface Showing {
  /** Unit to show it in; left out, the one that suits its size. */
  readonly unit?: string;
  /** Decimals that its column has; left out, as many digits as its interval carries. */
  readonly decimals?: number;
  /** Where its working is shown: "#how-density". */
  readonly link?: string;
  /** The interval instead of the single number, where it says more. */
  readonly interval?: boolean;
  /** Leave the unit to the column's head. */
  readonly bare?: boolean;
}

/** The words of a quantity: number, no-break space, unit. */
export function quantityWords(value: Value, showing: Showing = {}): string {
  if (showing.decimals !== undefined && showing.unit !== undefined) {
    const number = fixedNumber(numberInUnit(value.nominal, value.dimension, showing.unit) ?? value.nominal, showing.decimals);
    return showing.bare === true || showing.unit === '1' ? number : `${number}\u00a0${showing.unit}`;
  }
  const shown = formatInterval(isExact(value) ? { ...value, significant: MOST_DIGITS } : value, value.dimension, showing.unit);
  const number =
    showing.interval === true && shown.interval !== null && saysMore(shown.interval)
      ? shown.interval
      : isExact(value)
        ? withoutIdleZeros(shown.number)
        : shown.number;
  return showing.bare === true || shown.unit === '' || shown.unit === '1' ? number : `${number}\u00a0${shown.unit}`;
}

/** A counted number (turns, parts in series) has no last digit: it is printed as far as it says something. */
const MOST_DIGITS = 6;

function isExact({ low, high, significant }: Value): boolean {
  return significant > MOST_DIGITS && low === high;
}

function withoutIdleZeros(number: string): string {
  return number.includes('.') ? number.replace(/\.?0+$/, '') : number;
}

/** An interval whose two ends print alike is no more than its number. */
function saysMore(interval: string): boolean {
  const [low, high] = interval.split(' to ');
  return low !== high;
}

/**
 * A quantity as HTML: mono, never broken, dashed underline where it rests on an assumption, linked to its working where there is one.
 * A missing value is a dash with the word why.
 */
export function quantity(known: Known, showing: Showing = {}): string {
  if (isMissing(known)) return missingWords(known.reason);
  const words = escapeText(quantityWords(known, showing));
  const assumed = restsOnAssumption(known);
  const className = assumed ? 'q assumed' : 'q';
  const title = assumed ? '<span class="vh"> (rests on an assumption)</span>' : '';
  const link = showing.link ?? benchLink(known);
  return link === undefined
    ? `<span class="${className}">${words}</span>${title}`
    : `<a class="${className}" href="${link}">${words}</a>${title}`;
}

/** Where the instrument stands that a measured value was read on, or the method by which it was, where no instrument is known. */
function benchLink({ origin }: Value): string | undefined {
  if (origin.evidence !== 'measured') return undefined;
  const anchor = origin.instrument ?? origin.method;
  return anchor === undefined ? undefined : `/bench/#${anchor}`;
}

/** A dash and the reason. */
function missingWords(reason: string): string {
  return `<span class="faded">– ${escapeText(reason)}</span>`;
}
