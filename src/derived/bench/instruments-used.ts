import type { Entry, Fact } from '../../entry/entry.ts';
import type { LogSummary } from '../../logs/log-summary.ts';

/**
 * Instruments of the bench that an entry's values were read on, with the number of values, in the order of the entry. Of a log each
 * column of the file counts as one value.
 */
export function instrumentsUsed({ efficiency, measurements }: Entry, logs: readonly LogSummary[]): readonly (readonly [string, number])[] {
  const facts: readonly (Fact | null)[] = [
    ...efficiency.flatMap((point) => [point.measuredOutput, point.current, point.input, point.efficiency]),
    ...efficiency.flatMap(({ loads }) => loads.flatMap((load) => [load.measuredOutput, load.current, load.power])),
    ...measurements.map((point) => point.value),
  ];
  const columns = logs.flatMap(({ channels }) => channels.filter(({ head }) => head !== null).map(({ mean: { origin } }) => origin));
  const ids = [
    ...facts.map((fact) => fact?.readOn?.instrument),
    ...columns.map((origin) => (origin.evidence === 'measured' ? origin.instrument : undefined)),
  ];
  const counts = new Map<string, number>();
  for (const id of ids) {
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return [...counts];
}
