import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { offerWatts } from '../usb-pd/offer-watts.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'share-not-offered',
  title: 'No offer of the port can supply its share',
  severity: 'warning',
  why: 'A device can only draw what the port offers: a share above the largest offer reaches nobody.',
  advice: 'Look for an offer that is missing from the list, or correct the share.',
  source: commonPractice('power of an offer is its voltage times its current'),
};

export const shareNotOffered: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return (entry.sharing?.allocations ?? []).flatMap((allocation) =>
    allocation.shares.flatMap((share) => {
      const port = share.ports.length === 1 ? entry.ports.find((candidate) => candidate.id === share.ports[0]) : undefined;
      // A maker's own protocol may carry more than the offers that are listed.
      if (port === undefined || port.offers.length === 0 || port.protocols.length > 0) return [];
      const most = Math.max(...port.offers.map(offerWatts));
      if ((share.power.low ?? share.power.nominal) <= most * (1 + PRINTED_SLACK)) return [];
      const message = `${port.id} gets ${share.power.written} with ${allocation.ports.join(' + ')} in use, and its largest offer is ${rounded(most)} W.`;
      return [findingOf(RULE, atValue(...allocation.path), { message, subject: port.id })];
    }),
  );
}
