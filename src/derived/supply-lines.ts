import type { Nameplate } from '../entry/entry.ts';
import type { SupplyInput } from '../units/quantity.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import { edgeValue } from './fact-value.ts';

/** Data path of the printed input. */
export const INPUT_AT = 'nameplate.input';

/** Highest and lowest printed supply voltage over all input lines of the first line's kind; null where none is printed. */
export function supplyLines(
  nameplate: Nameplate,
): { readonly kind: 'AC' | 'DC'; readonly highest: Known<'voltage'>; readonly lowest: Known<'voltage'> } | null {
  const { input, inputs, evidence } = nameplate;
  if (input === null) return null;
  const lines = [input, ...inputs].filter((line) => line.kind === input.kind);
  return { kind: input.kind, highest: extreme(lines, 'high', evidence), lowest: extreme(lines, 'low', evidence) };
}

function extreme(lines: readonly SupplyInput[], edge: 'low' | 'high', evidence: Nameplate['evidence']): Known<'voltage'> {
  const edges = lines.map((line) => edgeValue({ quantity: line.voltage, evidence }, edge, INPUT_AT));
  return edges.reduce<Known<'voltage'>>(
    (best, known) => {
      if (isMissing(best)) return known;
      if (isMissing(known)) return best;
      const beats = edge === 'high' ? known.nominal > best.nominal : known.nominal < best.nominal;
      return beats ? known : best;
    },
    missing('no input voltage printed', [INPUT_AT]),
  );
}
