import type { Entry } from '../../entry/entry.ts';
import type { DeratingPolicy } from '../../standards/derating/policy.ts';
import type { InputFigures } from '../derived.ts';
import type { Known } from '../../values/value.ts';

/** What every stress model sees. */
export interface StressInput {
  readonly entry: Entry;
  readonly input: InputFigures;
  /** Highest voltage on the primary bus: that of the bulk capacitor, or of a direct input. */
  readonly bus: Known<'voltage'>;
  readonly policy: DeratingPolicy;
}
