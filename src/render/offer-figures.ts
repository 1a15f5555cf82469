import type { Entry, Port } from '../entry/entry.ts';
import { envelopeAxes } from '../figures/envelope-axes.ts';
import { escapeText } from '../figures/markup.ts';
import { offerEnvelope } from '../figures/offer-envelope.ts';
import { cableFor, CABLES } from '../usb-pd/cable.ts';
import { offerWords } from '../usb-pd/offer-words.ts';
import type { Offer } from '../usb-pd/offer.ts';
import { portAnchor } from './references.ts';

/** A figure of amperes over volts for each output, all on the same axes. */
export function offerFigures(entry: Entry): readonly string[] {
  const ports = entry.ports.filter((port) => port.direction !== 'input' && port.offers.length > 0);
  const axes = envelopeAxes(ports.flatMap((port) => port.offers));
  return ports.map((port) => {
    const id = `offers-${port.id.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`;
    const watts = port.power?.quantity.nominal ?? null;
    const description = `${port.offers.map((offer) => `${nameOf(offer)}${offerWords(offer)}`).join('; ')}.${watts === null ? '' : ` Rated ${port.power?.quantity.written ?? ''}.`}`;
    const svg = offerEnvelope({ id, port: port.id, watts, offers: port.offers, description, axes });
    return `<figure class="envelope-of" id="${portAnchor(port.id)}"><figcaption><b class="mono">${escapeText(port.id)}</b> ${captionOf(port)}</figcaption>${svg}</figure>`;
  });
}

function nameOf(offer: Offer): string {
  return offer.kind === 'fixed' || offer.kind === 'plain' ? '' : `${offer.kind} `;
}

/** "100 W  USB PD, PPS; above 3 A with a 5 A cable". */
function captionOf(port: Port): string {
  const power = port.power === null ? '' : `<span class="mono">${escapeText(port.power.quantity.written)}</span> `;
  const cable = cableWords(port).replaceAll(/(\d) (?=[AVW])/g, '$1\u00a0');
  return `${power}<span class="kinds">${escapeText(kindsOf(port).join(', '))}${cable === '' ? '' : `; ${escapeText(cable)}`}</span>`;
}

function kindsOf(port: Port): readonly string[] {
  const kinds = new Set(port.offers.map((offer) => offer.kind));
  if ([...kinds].every((kind) => kind === 'plain'))
    return [port.offers.length === 1 ? 'one voltage, not negotiated' : 'voltages without USB PD'];
  const ranges = (['variable', 'battery', 'PPS', 'SPR AVS', 'EPR AVS'] as const).filter((kind) => kinds.has(kind));
  return ['USB PD', ...ranges];
}

/** The least cable for all that the port offers, where any cable will not do. */
function cableWords(port: Port): string {
  if (port.connector !== 'USB-C') return '';
  const needed = port.offers.map((offer) =>
    offer.kind === 'fixed' ? cableFor(offer.volts, offer.amps) : offer.kind === 'EPR AVS' ? CABLES.epr : CABLES.unmarked,
  );
  if (needed.includes(CABLES.epr)) return 'above 20 V with a 240 W cable';
  return needed.includes(CABLES.marked) ? 'above 3 A with a 5 A cable' : '';
}
