import type { Dimension } from '../units/dimension.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { Accuracy } from './bench.ts';

const PER_CENT = /^(\d+(?:\.\d+)?)\s*%\s*(?:of\s+)?(reading|rdg|range|rng|full scale|fs)?$/i;
const COUNTS = /^(\d+(?:\.\d+)?)\s*(?:digits?|dgts?|counts?|cts?|d|lsd)?$/i;
const NAMED = /^(range|resolution)\s+(.+)$/i;

type Parts = { -readonly [K in Exclude<keyof Accuracy, 'quantity' | 'written'>]: Accuracy[K] };

/**
 * Reads an accuracy in the trade's writing: terms joined by "+", then after a comma the weight of the last place or "range 60 V".
 * "0.1 % + 2 digits", "±(0.5 % rdg + 3 counts), 1 mV", "0.05 % + 0.03 % range, range 60 V", "1.5 °C".
 */
export function readAccuracy(
  text: string,
  quantity: Dimension,
): { readonly ok: true; readonly accuracy: Accuracy } | { readonly ok: false; readonly message: string } {
  const parts: Parts = { ofReading: 0, ofRange: 0, range: null, counts: 0, resolution: null, fixed: 0 };
  const [sum = '', ...rest] = text.replace(/^\s*±\s*/, '').split(/[,;]/);
  const terms = [
    ...sum
      .replace(/^\s*\(|\)\s*$/g, '')
      .split('+')
      .map((term) => ({ term: term.trim(), into: 'fixed' as const })),
    ...rest.map((term) => ({ term: term.trim(), into: 'resolution' as const })),
  ];
  for (const { term, into } of terms) if (!takeTerm(parts, term, into, quantity)) return { ok: false, message: unreadable(term, text) };
  if (parts.ofRange > 0 && parts.range === null)
    return { ok: false, message: `"${text}" states a share of the range; add which: "range 60 V"` };
  return { ok: true, accuracy: { quantity, written: text.trim(), ...parts } };
}

function takeTerm(parts: Parts, term: string, into: 'fixed' | 'resolution', quantity: Dimension): boolean {
  const share = PER_CENT.exec(term);
  if (share !== null) {
    const isRange = /^(?:range|rng|full scale|fs)$/i.test(share[2] ?? '');
    parts[isRange ? 'ofRange' : 'ofReading'] += Number(share[1]) / 100;
    return true;
  }
  const counts = into === 'fixed' ? COUNTS.exec(term) : null;
  if (counts !== null) {
    parts.counts += Number(counts[1]);
    return true;
  }
  const named = NAMED.exec(term);
  const amount = amountOf(named?.[2] ?? term, quantity);
  if (amount === null) return false;
  if (named !== null) parts[named[1]?.toLowerCase() === 'range' ? 'range' : 'resolution'] = amount;
  else if (into === 'fixed') parts.fixed += amount;
  else parts.resolution = amount;
  return true;
}

/** A distance between temperatures is written in °C as often as in K. */
function amountOf(text: string, quantity: Dimension): number | null {
  const dimensions: readonly Dimension[] = quantity === 'temperature' ? ['temperature difference', 'temperature'] : [quantity];
  for (const dimension of dimensions) {
    const reading = readQuantity(text, dimension);
    if (reading.ok) return Math.abs(reading.value.nominal);
  }
  return null;
}

function unreadable(term: string, text: string): string {
  return `"${term}" in "${text}" is no accuracy: write it as "0.1 % + 2 digits" or "0.05 % rdg + 3 counts, 1 mV"`;
}
