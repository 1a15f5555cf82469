import type { EfficiencyPoint, Fact } from '../../entry/entry.ts';

/**
 * A point whose two sides are watts read on one and the same instrument, each with what its counts leave open and without the share of
 * the reading. A gain error lies to the same side in both readings, so it cancels in their ratio: (P(1 + g) + c) / (Q(1 + g) + d). Null
 * where the sides are not of one instrument alone, or the output is volts times amperes: the gain of one quantity is not that of another.
 */
export function withoutSharedGain(point: EfficiencyPoint): EfficiencyPoint | null {
  const { input, loads, load } = point;
  const outputs: readonly (Fact | null)[] = loads.length > 0 ? loads.map(({ power }) => power) : [load];
  // Of several instruments nobody can say that the same one read both sides.
  const isSingle = point.byInstrument?.length === 1;
  const isAlike = isSingle && outputs.every((output) => isReadAlike(input, output));
  if (!isAlike) return null;
  return {
    ...point,
    input: countsAlone(input),
    load: load?.quantity.dimension === 'power' ? countsAlone(load) : load,
    loads: loads.map((each) => ({ ...each, power: countsAlone(each.power) })),
  };
}

/** Whether two facts of one quantity were read on one instrument that states its accuracy. */
function isReadAlike(one: Fact | null, other: Fact | null): boolean {
  if (one?.readOn?.fixed === undefined || other?.readOn?.fixed === undefined) return false;
  return one.readOn.instrument === other.readOn.instrument && one.quantity.dimension === other.quantity.dimension;
}

function countsAlone<F extends Fact | null>(fact: F): F {
  if (fact?.readOn?.fixed === undefined) return fact;
  return { ...fact, readOn: { ...fact.readOn, within: fact.readOn.fixed } };
}
