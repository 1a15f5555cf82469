import type { Entry, Fact } from '../../entry/entry.ts';

/** Instruments of the bench that an entry's values were read on, with the number of values, in the order of the entry. */
export function instrumentsUsed({ efficiency, measurements }: Entry): readonly (readonly [string, number])[] {
  const facts: readonly (Fact | null)[] = [
    ...efficiency.flatMap((point) => [point.measuredOutput, point.current, point.input, point.efficiency]),
    ...measurements.map((point) => point.value),
  ];
  const counts = new Map<string, number>();
  for (const fact of facts) {
    const id = fact?.readOn?.instrument;
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return [...counts];
}
