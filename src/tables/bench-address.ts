import type { EfficiencyPoint, Fact, MadeBy } from '../entry/entry.ts';

/** Where the bench page tells of what made something measured: the instrument, else the method; null where neither is known. */
export function benchAddress({ readOn, method }: MadeBy): string | null {
  const anchor = readOn?.instrument ?? method;
  return anchor === undefined ? null : `/bench/#${anchor}`;
}

/** What measured an efficiency: its input, else the stated figure, else a voltage. */
export function efficiencyAddress({ input, efficiency, measuredOutput, loads }: EfficiencyPoint): { readonly link?: string } {
  const link = benchAddressOf([input, efficiency, measuredOutput, ...loads.map((load) => load.measuredOutput)]);
  return link === null ? {} : { link };
}

/** The address for several facts that stand in one cell: that of the first which has one. */
export function benchAddressOf(facts: readonly (Fact | null)[]): string | null {
  for (const fact of facts) {
    const address = fact === null ? null : benchAddress(fact);
    if (address !== null) return address;
  }
  return null;
}
