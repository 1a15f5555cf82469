import type { Entry, MadeBy } from '../../entry/entry.ts';
import type { LogSummary } from '../../logs/log-summary.ts';

/**
 * Instruments of the bench that an entry's values were read on, with the number of values, in the order of the entry. A value whose method
 * is done with several counts for each of them; of a log each column of the file counts as one value.
 */
export function instrumentsUsed(entry: Entry, logs: readonly LogSummary[]): readonly (readonly [string, number])[] {
  const columns = logs.flatMap(({ channels }) => channels.filter(({ head }) => head !== null).map(({ mean: { origin } }) => origin));
  const ids = [
    ...madeIn(entry).flatMap(({ readOn, with: several = [] }) => (readOn === undefined ? several : [readOn.instrument])),
    ...columns.flatMap((origin) => (origin.evidence === 'measured' && origin.instrument !== undefined ? [origin.instrument] : [])),
  ];
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts];
}

/** What made each measured value, of whatever kind. */
function madeIn({ efficiency, measurements, body, insulation, stages, parts, ports, sharing, discharged }: Entry): readonly MadeBy[] {
  const made: readonly (MadeBy | null | undefined)[] = [
    ...efficiency.flatMap((point) => [point.measuredOutput, point.current, point.input, point.efficiency]),
    ...efficiency.flatMap(({ load }) => (load?.quantity.dimension === 'power' ? [load] : [])),
    ...efficiency.flatMap(({ loads }) => loads.flatMap((load) => [load.measuredOutput, load.current, load.power])),
    ...measurements.map((point) => point.value),
    ...[body.size, body.volume, body.mass, discharged?.voltage],
    ...insulation.flatMap((place) => [place.clearance, place.creepage, place.slot, place.thickness]),
    ...stages.flatMap(({ parameters }) => Object.values(parameters)),
    ...parts.map(({ madeBy }) => madeBy),
    ...ports.flatMap(({ madeBy, power }) => [madeBy, power]),
    ...(sharing?.allocations ?? []).map(({ madeBy }) => madeBy),
  ];
  return made.filter((one) => one !== null && one !== undefined);
}
