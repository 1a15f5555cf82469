import type { Entry } from '../../entry/entry.ts';
import type { DeratingPolicy } from '../../standards/derating/policy.ts';
import type { InputFigures } from '../derived.ts';

/** What every stress model sees. */
export interface StressInput {
  readonly entry: Entry;
  readonly input: InputFigures;
  readonly policy: DeratingPolicy;
}
