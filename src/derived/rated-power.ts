import type { Entry, Port } from '../entry/entry.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { factValue } from './fact-value.ts';
import { offeredPower } from './offered.ts';

/**
 * Rated output power of the device: the printed total, else the total of the sharing block, else the limit or the strongest
 * offer of a single port, else the largest sum of the share matrix where the set of all ports is known. A bound such as
 * "100 W max" is the rating itself.
 */
export function ratedPower(entry: Entry, shares: ShareMatrix | null): Known<'power'> {
  const total = entry.nameplate.total ?? entry.sharing?.total ?? null;
  if (total !== null) return factValue(total, { bound: 'use' });
  const outputs = entry.ports.filter((port) => port.direction !== 'input');
  const [only, ...others] = outputs;
  if (only === undefined) return missing('no output power printed and no output port described', ['rated power']);
  if (others.length === 0) return portPower(only);
  return (
    largestSum(shares) ?? missing('several ports, and neither a total nor the shares of all ports together are known', ['rated power'])
  );
}

/** Power of one port alone: its own limit, else its strongest offer. */
function portPower(port: Port): Known<'power'> {
  if (port.power !== null) return factValue(port.power, { bound: 'use' });
  return offeredPower(port);
}

function largestSum(shares: ShareMatrix | null): Value<'power'> | null {
  if (shares === null) return null;
  const sums = shares.rows.flatMap((row) => (row.sum === null ? [] : [row]));
  if (!sums.some((row) => row.ports.length === shares.ports.length)) return null;
  return sums.reduce<Value<'power'> | null>((best, row) => larger(best, row.sum), null);
}

function larger(best: Value<'power'> | null, sum: Value<'power'> | null): Value<'power'> | null {
  if (sum === null || isMissing(sum)) return best;
  return best === null || sum.nominal > best.nominal ? sum : best;
}
