import type { DataPath, Finding } from '../diagnostics/finding.ts';
import type { Port } from '../entry/entry.ts';
import type { OfferRemark, OfferRule, PortOffers } from '../usb-pd/judgement/judgement.ts';
import type { CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';

/** What a rule on offers says of every output of an entry, as findings at the offer, at the stated power, or at the list. */
export function offerFindings(rule: Rule, judge: OfferRule, { entry }: CheckInput): Finding[] {
  return entry.ports
    .filter((port) => port.direction !== 'input' && !isRepeated(port))
    .flatMap((port) => judge(portOffers(port)).map((remark) => findingAt(rule, port, remark)));
}

/** A port as the rules see it. */
function portOffers(port: Port): PortOffers {
  const { quantity } = port.power ?? { quantity: null };
  const rated =
    quantity === null
      ? null
      : { low: quantity.low ?? quantity.nominal, high: quantity.high ?? quantity.nominal, written: quantity.written };
  const { offers, revision, readThrough: cable, connector, protocols } = port;
  return { offers, rated, revision, cable, connector, protocols };
}

/** A port that equals another in offers and power would only say the same again. */
function isRepeated(port: Port): boolean {
  const own = [...port.offers.map((offer) => offer.path), port.power?.path];
  return own.every((path) => path === undefined || path[1] !== port.id);
}

function findingAt(rule: Rule, port: Port, remark: OfferRemark): Finding {
  const { severity, source } = remark;
  return findingOf(rule, atValue(...pathOf(port, remark)), {
    message: `${port.id}: ${remark.message}`,
    severity,
    source,
    subject: port.id,
  });
}

function pathOf(port: Port, { at }: OfferRemark): DataPath {
  if (at === 'power') return port.power?.path ?? port.path;
  const path = port.offers[at ?? 0]?.path ?? port.path;
  if (at !== null) return path;
  const list = path.indexOf('offers');
  return list === -1 ? path : path.slice(0, list + 1);
}
