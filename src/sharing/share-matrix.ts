import type { Value } from '../values/value.ts';
import type { Entry } from '../entry/entry.ts';

type DataPath = Entry['ports'][number]['path'];

/** How the shares of one set of ports are known. */
type SetStanding = 'known' | 'implied' | 'missing';

/** What one port gets in one set: its own share, or a part in a pool named with the others that draw on it. */
export interface PortShare {
  readonly port: string;
  readonly power: Value<'power'>;
  /** All ports of the pool, itself included; a single element where the share is its own. */
  readonly pool: readonly string[];
}

export interface SetRow {
  /** Ports in use, in the order of the entry. */
  readonly ports: readonly string[];
  /** "C1 + C3". */
  readonly key: string;
  readonly order: readonly string[] | null;
  readonly standing: SetStanding;
  /** For an implied set: the key of the set that implies it, or "assured" where the sharing policy does. */
  readonly impliedBy: string | null;
  readonly shares: readonly PortShare[];
  /** Each pool counted once; null for a missing set. */
  readonly sum: Value<'power'> | null;
  /** Total less sum; null for a missing set and where no total is known. Negative where the shares promise more. */
  readonly unused: Value<'power'> | null;
  /** Where in the entry the shares stand; null for a missing or implied set. */
  readonly path: DataPath | null;
}

/** The sets of n output ports that were asked for, by count and then in the entry's order: all 2^n − 1 of them, unless `capped`. */
export interface ShareMatrix {
  readonly ports: readonly string[];
  readonly rows: readonly SetRow[];
  /** Sets, not rows: a set given in two orders of plugging counts once. They add up to 2^n − 1. */
  readonly counts: { readonly known: number; readonly implied: number; readonly missing: number };
  /** More than eight output ports: missing sets are counted, not listed. */
  readonly capped: boolean;
  /** Groups of ports that behave alike, as the author gave them. */
  readonly alike: readonly (readonly string[])[];
  /** The author says that every port keeps its own limit whatever the others do. */
  readonly isAssured: boolean;
  /** How far each port can fall: highest and lowest share seen in any known or implied set it is in. */
  readonly falls: readonly { readonly port: string; readonly highest: Value<'power'> | null; readonly lowest: Value<'power'> | null }[];
}
