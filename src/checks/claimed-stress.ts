import type { StressRow } from '../derived/derived.ts';
import type { Claim, Entry } from '../entry/entry.ts';
import { isMissing, type Value } from '../values/value.ts';

/** A stress that a document states, beside the one that was worked out for the part that it is of. */
export interface ClaimedStress {
  readonly claim: Claim;
  readonly references: readonly string[];
  /** Every stress of such a part that could be worked out, plain and with an allowance; one of them should be the stated one. */
  readonly computed: readonly Value[];
}

/** Words of claims for the voltage on a part, and the roles that they mean. */
const ROLES: Readonly<Record<string, readonly string[]>> = {
  'drain voltage': ['primary-switch'],
  'switch voltage': ['primary-switch'],
  'primary switch voltage': ['primary-switch'],
  'diode reverse voltage': ['rectifier-diode'],
  'rectifier reverse voltage': ['rectifier-diode', 'synchronous-rectifier'],
  'snubber diode voltage': ['clamp-diode'],
  'clamp diode voltage': ['clamp-diode'],
  'clamp capacitor voltage': ['clamp-capacitor'],
  'resonant capacitor voltage': ['resonant-capacitor'],
};

/** Claims about the voltage on a part of which a stress was worked out. */
export function claimedStresses(entry: Entry, stress: readonly StressRow[]): readonly ClaimedStress[] {
  return entry.claims.flatMap((claim) => {
    const roles = ROLES[claim.of.toLowerCase()] ?? [];
    const rows = stress.filter((row) => roles.includes(row.role));
    const known = rows.flatMap((row) => (isMissing(row.stress) ? [] : [row.stress]));
    const computed = known.filter(({ dimension }) => dimension === claim.quantity?.dimension);
    return computed.length === 0 ? [] : [{ claim, references: rows[0]?.references ?? [], computed }];
  });
}
