import type { Bench } from '../../entry/bench.ts';
import type { BenchLink, Fact } from '../../entry/entry.ts';
import type { MadeBy } from '../../entry/entry-facts.ts';
import { factOn } from './fact-on-instruments.ts';

/** Puts the method that made it beside a measured fact; of several the first leads, the others stand beside it in words. */
export type FactMaker = <F extends Fact | null>(fact: F, methods: readonly BenchLink[]) => F;

/** A maker for one bench: where the entry names no instrument, those that the method is done with count. */
export function factMaker({ instruments, methods: known }: Bench): FactMaker {
  return (fact, [first]) => {
    if (fact === null || fact.evidence !== 'measured' || first === undefined) return fact;
    const named = known.find(({ id }) => id === first.id)?.with ?? [];
    const on =
      fact.readOn === undefined
        ? factOn(
            fact,
            instruments.filter(({ id }) => named.includes(id)),
          )
        : fact;
    return { ...on, method: first.id };
  };
}

/** The same for what is measured and is no single fact: outer edges, offers, shares, the values of a part. */
export function madeBy([first]: readonly BenchLink[]): MadeBy {
  return first === undefined ? {} : { method: first.id };
}
