import { BC12, TYPE_C_CURRENTS } from '../../standards/usb-output-limits.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

const RULE = 'plain-outputs';

/** Outputs without USB PD: Type-C current is 5 V with a few set currents, BC 1.2 ends at 1.5 A; other raised voltages need a protocol. */
export function plainOutputs(port: PortOffers): readonly OfferRemark[] {
  return port.offers.flatMap((offer, at): OfferRemark[] => {
    if (offer.kind !== 'plain') return [];
    const remark = /bc\s?1\.2|dcp/i.test(offer.written) ? onBc12(offer) : port.connector === 'USB-C' ? onTypeC(offer) : onUsbA(port, offer);
    return remark === null ? [] : [{ rule: RULE, at, ...remark }];
  });
}

type Said = Omit<OfferRemark, 'rule' | 'at'> | null;
type Plain = Extract<JudgedOffer, { kind: 'plain' }>;

function onBc12(offer: Plain): Said {
  if (offer.volts === 5 && offer.amps <= BC12.amps + 1e-9) return null;
  return { severity: 'warning', message: `${offer.written}: BC 1.2 is 5 V and at most 1.5 A.`, source: BC12.source };
}

function onTypeC(offer: Plain): Said {
  if (offer.volts !== 5) {
    return {
      severity: 'warning',
      message: `${offer.written}: without USB PD a Type-C port has 5 V and no other voltage.`,
      source: TYPE_C_CURRENTS.source,
    };
  }
  if (TYPE_C_CURRENTS.amps.some((amps) => Math.abs(amps - offer.amps) < 0.005)) return null;
  return {
    severity: 'note',
    message: `${offer.written}: Type-C current is signalled as 0.5, 0.9, 1.5 or 3 A.`,
    source: TYPE_C_CURRENTS.source,
  };
}

/** A USB-A socket above 5 V follows a maker's own protocol, which the author can name. */
function onUsbA(port: PortOffers, offer: Plain): Said {
  if (port.connector !== 'USB-A' || offer.volts <= 5 || port.protocols.length > 0) return null;
  const source = {
    title: 'Common practice',
    section: 'USB-A ports have 5 V; other voltages need a protocol over the data lines',
    standing: 'common practice',
  } as const;
  return { severity: 'note', message: `${offer.written} at USB-A follows a maker’s own protocol, and none is named.`, source };
}
