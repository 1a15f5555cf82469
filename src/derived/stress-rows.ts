import type { Entry } from '../entry/entry.ts';
import { policyOf } from '../standards/derating/index.ts';
import type { DeratingPolicy } from '../standards/derating/policy.ts';
import { isMissing } from '../values/value.ts';
import type { BulkFigures, InputFigures, StressRow } from './derived.ts';
import { busParts } from './stress/bus-parts.ts';
import { mainsParts } from './stress/mains-parts.ts';
import { primarySwitches } from './stress/primary-switches.ts';
import { secondaryParts } from './stress/secondary-parts.ts';

/** Every stress of the entry against the rating of its part, in the order power flows, judged by one policy. */
export function stressRows(
  entry: Entry,
  input: InputFigures,
  bulk: BulkFigures,
  policy: DeratingPolicy = policyOf(entry.derating),
): readonly StressRow[] {
  const bus = isMissing(bulk.voltage) ? input.peak : bulk.voltage;
  const given = { entry, input, bus, policy };
  return [...mainsParts(given), ...busParts(given), ...primarySwitches(given), ...secondaryParts(given)];
}
