import type { Value } from '../values/value.ts';

/** How the shares of one set of ports are known. */
export type SetStanding = 'known' | 'implied' | 'missing';

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
  /** For an implied set: the key of the set that implies it. */
  readonly impliedBy: string | null;
  readonly shares: readonly PortShare[];
  /** Each pool counted once; null for a missing set. */
  readonly sum: Value<'power'> | null;
  readonly unused: Value<'power'> | null;
}

/** All 2^n − 1 sets of n output ports, by count and then in the entry's order. */
export interface ShareMatrix {
  readonly ports: readonly string[];
  readonly rows: readonly SetRow[];
  readonly counts: { readonly known: number; readonly implied: number; readonly missing: number };
  /** How far each port can fall: highest and lowest share seen in any known or implied set it is in. */
  readonly falls: readonly { readonly port: string; readonly highest: Value<'power'> | null; readonly lowest: Value<'power'> | null }[];
}
