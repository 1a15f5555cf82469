import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import type { Entry, Port } from '../entry/entry.ts';
import type { Offer } from '../usb-pd/offer.ts';
import { fixedNumber } from './quantity.ts';
import { fold } from './fold.ts';
import { offerFigures } from './offer-figures.ts';
import { benchAddress } from '../tables/bench-address.ts';
import { counted } from '../units/counted.ts';
import { sentence } from './words.ts';

/** A number without the zeros that say nothing: 3.3, 21, 2.25. */
function short(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** What each port offers: a figure of amperes over volts a port, then the same numbers as a table, beside the figure where it is alone. */
export function offersView(entry: Entry): string {
  const table = offersTable(entry);
  if (table === '') return '';
  const figures = offerFigures(entry);
  return figures.length === 1
    ? `<div class="envelopes">${figures.join('')}<div>${table}</div></div>`
    : `<div class="envelopes">${figures.join('')}</div>${fold(`<b>${counted(offerCount(entry), 'offer')}</b> of ${counted(figures.length, 'port')} as a table`, table)}`;
}

function offerCount(entry: Entry): number {
  return entry.ports.filter((port) => port.direction !== 'input').reduce((sum, port) => sum + port.offers.length, 0);
}

/** What each port offers, one column a port: fixed voltages in amperes, then the adjustable ranges as written by their limits. */
function offersTable(entry: Entry): string {
  const ports = entry.ports.filter((port) => port.direction !== 'input' && port.offers.length > 0);
  if (ports.length === 0) return '';
  const heads = ports.map((port) => `<th scope="col" class="n"><b class="mono">${escapeText(port.id)}</b> A</th>`).join('');
  const volts = [...new Set(ports.flatMap((port) => port.offers.flatMap((offer) => fixedVolts(offer) ?? [])))].sort(
    (one, other) => one - other,
  );
  const decimals = ports.some((port) =>
    port.offers.some((offer) => 'amps' in offer && Math.abs(offer.amps * 10 - Math.round(offer.amps * 10)) > 1e-6),
  )
    ? 2
    : 1;
  const fixedRows = volts.map(
    (at) => `<tr><th scope="row" class="n ref">${short(at)}\u00a0V</th>${ports.map((port) => fixedCell(port, at, decimals)).join('')}</tr>`,
  );
  const ranges = (['PPS', 'SPR AVS', 'EPR AVS', 'variable', 'battery'] as const).filter((kind) =>
    ports.some((port) => port.offers.some((offer) => offer.kind === kind)),
  );
  const rangeRows = ranges.map(
    (kind) =>
      `<tr><th scope="row" class="n ref">${kind === 'variable' ? 'Variable' : kind === 'battery' ? 'Battery' : kind}</th>${ports.map((port) => rangeCell(port, kind)).join('')}</tr>`,
  );
  const table = `<table class="offers"><caption class="vh">Offers of each port: current in amperes at each fixed voltage, then adjustable ranges.</caption><thead><tr><th scope="col" class="n">V</th>${heads}</tr></thead><tbody>${fixedRows.join('')}</tbody><tbody>${rangeRows.join('')}</tbody></table>`;
  return ports.length > 3 ? scrollRegion('Offers of each port', table) : table;
}

function fixedVolts(offer: Offer): number | null {
  return offer.kind === 'fixed' || offer.kind === 'plain' ? offer.volts : null;
}

function fixedCell(port: Port, volts: number, decimals: number): string {
  const offer = port.offers.find((candidate) => fixedVolts(candidate) === volts);
  const amps = offer !== undefined && 'amps' in offer ? fixedNumber(offer.amps, decimals) : null;
  return amps === null
    ? '<td class="n"><span class="dash0"></span><span class="vh">not offered</span></td>'
    : `<td class="n">${readBy(port, amps)}</td>`;
}

/** An offer that was read leads to what read it. */
function readBy({ madeBy }: Port, words: string): string {
  const address = madeBy === undefined ? null : benchAddress(madeBy);
  return address === null ? words : `<a href="${escapeText(address)}">${words}</a>`;
}

function rangeCell(port: Port, kind: Offer['kind']): string {
  const offers = port.offers.filter((candidate) => candidate.kind === kind);
  if (offers.length === 0) return '<td class="n"><span class="dash0"></span><span class="vh">not offered</span></td>';
  return `<td class="n">${offers.map((offer) => readBy(port, escapeText(rangeWords(offer)))).join('<br>')}</td>`;
}

function rangeWords(offer: Offer): string {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return `${short(offer.amps)}\u00a0A`;
    case 'variable':
    case 'PPS':
      return `${short(offer.minVolts)}–${short(offer.maxVolts)}\u00a0V ${short(offer.amps)}\u00a0A`;
    case 'battery':
    case 'EPR AVS':
      return `${short(offer.minVolts)}–${short(offer.maxVolts)}\u00a0V ${short(offer.watts)}\u00a0W`;
    case 'SPR AVS':
      return offer.ampsTo20V === null
        ? `9–15\u00a0V ${short(offer.ampsTo15V)}\u00a0A`
        : `9–15\u00a0V ${short(offer.ampsTo15V)}\u00a0A, to 20\u00a0V ${short(offer.ampsTo20V)}\u00a0A`;
  }
}

/** One line a port: limit, how the offers were read, other protocols as the author names them. */
export function offersSide(entry: Entry): string {
  const lines = entry.ports
    .filter((port) => port.direction !== 'input')
    .map((port) => {
      const pieces = [
        port.connector + (port.power === null ? '' : `, ${port.power.quantity.written}`),
        ...(port.revision === null ? [] : [`USB PD ${port.revision}`]),
        ...(port.readThrough === null
          ? []
          : [`read through ${port.readThrough === 'EPR cable' ? 'an EPR cable' : `a ${port.readThrough}`}`]),
        ...(port.protocols.length === 0 ? [] : [`also ${port.protocols.join(', ')}`]),
        ...(port.note === null ? [] : [port.note]),
      ];
      return `<li><b class="mono">${escapeText(port.id)}</b> ${sentence(pieces.join('; '))}</li>`;
    });
  return `<ul class="lines note">${lines.join('')}</ul>`;
}
