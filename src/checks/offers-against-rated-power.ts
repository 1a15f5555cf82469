import type { Finding } from '../diagnostics/finding.ts';
import type { Port } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { offerWatts } from '../usb-pd/offer-watts.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'offers-against-rated-power',
  title: 'A port’s offers and its stated power do not meet',
  severity: 'warning',
  why: 'An offer above the stated power, or a stated power that no offer delivers, is a slip or a label that promises too much.',
  advice: 'Compare the offer and the power with what the tester shows.',
  source: {
    title: 'Retail listings of 20 W and 25 W adapters',
    section: '9 V × 2.22 A = 19.98 W and 12 V × 1.67 A = 20.04 W are both sold as 20 W: slack of 1 % or one last digit (10 mA)',
    standing: 'read',
  },
};

export const offersAgainstRatedPower: Check = { ...RULE, check };

/** Step of the current in a fixed supply object, USB PD R3.2 table 6-9. */
const LAST_DIGIT_AMPS = 0.01;

function check({ entry }: CheckInput): Finding[] {
  return entry.ports.filter((port) => port.direction !== 'input').flatMap((port) => [...offersAbove(port), ...powerNotOffered(port)]);
}

/** Programmable offers are held to the port's power by the source itself, so only the others are compared. */
function offersAbove(port: Port): Finding[] {
  const power = port.power;
  if (power === null) return [];
  const rated = power.quantity.high ?? power.quantity.nominal;
  return port.offers.flatMap((offer) => {
    if (offer.kind === 'PPS' || offer.kind === 'SPR AVS') return [];
    const volts = offer.kind === 'fixed' || offer.kind === 'plain' ? offer.volts : 0;
    const most = offerWatts(offer);
    if (most <= rated + Math.max(rated * PRINTED_SLACK, volts * LAST_DIGIT_AMPS)) return [];
    const message = `${port.id} offers ${offer.written} (${rounded(most, 4)} W), above its stated ${power.quantity.written}.`;
    return [findingOf(RULE, atValue(...offer.path), { message, subject: port.id })];
  });
}

function powerNotOffered(port: Port): Finding[] {
  // A maker's own protocol may carry more than the offers that are listed.
  if (port.power === null || port.offers.length === 0 || port.protocols.length > 0) return [];
  const most = Math.max(...port.offers.map(offerWatts));
  const volts = Math.max(...port.offers.map((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? offer.volts : 0)));
  const rated = port.power.quantity.low ?? port.power.quantity.nominal;
  if (most >= rated - Math.max(rated * PRINTED_SLACK, volts * LAST_DIGIT_AMPS)) return [];
  const message = `${port.id} is stated at ${port.power.quantity.written}, and its largest offer is ${rounded(most, 4)} W.`;
  return [findingOf(RULE, atValue(...port.power.path), { message, subject: port.id })];
}
