import type { Bench } from '../../entry/bench.ts';
import type { BenchLink, Fact } from '../../entry/entry.ts';
import type { MadeBy } from '../../entry/entry-facts.ts';
import { factOn } from './fact-on-instruments.ts';

/** Puts what made it beside something measured; of several methods the first leads, the others stand beside it in words. */
export interface FactMaker {
  readonly by: <F extends Fact | null>(fact: F, methods: readonly BenchLink[]) => F;
  /** The same for what is measured and is no single fact: outer edges, offers, shares, the values of a part. */
  readonly made: (methods: readonly BenchLink[]) => MadeBy;
}

/** A maker for one bench: where the entry names no instrument, those that the method is done with count. */
export function factMaker({ instruments, methods: known }: Bench): FactMaker {
  const made: FactMaker['made'] = ([first]) => {
    if (first === undefined) return {};
    const named = known.find(({ id }) => id === first.id)?.with ?? [];
    return { method: first.id, ...(named.length === 0 ? {} : { with: named }) };
  };
  return {
    made,
    by(fact, methods) {
      if (fact === null || fact.evidence !== 'measured' || methods.length === 0) return fact;
      const by = made(methods);
      const on =
        fact.readOn === undefined
          ? factOn(
              fact,
              instruments.filter(({ id }) => by.with?.includes(id) === true),
            )
          : fact;
      return { ...on, ...by };
    },
  };
}
