import type { Finding } from '../diagnostics/finding.ts';
import type { Allocation, Entry, Port, Share } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { mostWatts } from '../usb-pd/most-watts.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'share-not-offered',
  title: 'No offer of the port can supply its share',
  severity: 'warning',
  why: 'A device can only draw what the port offers: a share above the largest offer reaches nobody.',
  advice: 'Look for an offer that is missing from the list, or correct the share.',
  source: commonPractice('an offer carries its voltage times its current, PPS up to the top of its range'),
};

export const shareNotOffered: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return (entry.sharing?.allocations ?? []).flatMap((allocation) =>
    allocation.shares.flatMap((share) => findingsOf(share, allocation, entry)),
  );
}

/** A pool is held against what all its ports can carry together. */
function findingsOf(share: Share, allocation: Allocation, entry: Entry): Finding[] {
  const carried = share.ports.map((id) => mostCarried(entry.ports.find((port) => port.id === id)));
  const known = carried.filter((watts) => watts !== null);
  if (known.length < carried.length) return [];
  const most = known.reduce((sum, watts) => sum + watts, 0);
  if ((share.power.low ?? share.power.nominal) <= most * (1 + PRINTED_SLACK)) return [];
  const names = share.ports.join(' and ');
  const said =
    share.ports.length === 1
      ? `${names} gets ${share.power.written} with ${allocation.ports.join(' + ')} in use, and its largest offer is ${rounded(most)} W.`
      : `${names} share ${share.power.written} with ${allocation.ports.join(' + ')} in use, and their largest offers are ${rounded(most)} W together.`;
  return [findingOf(RULE, atValue(...allocation.path), { message: said, subject: share.ports.join(', ') })];
}

/** null where nothing can be said: no offers listed, or a maker's own protocol that may carry more than the list. */
function mostCarried(port: Port | undefined): number | null {
  if (port === undefined || port.offers.length === 0 || port.protocols.length > 0) return null;
  return Math.max(...port.offers.map(mostWatts));
}
