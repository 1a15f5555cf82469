import type { OfferBody } from '../usb-pd/offer.ts';
import { envelopeAxes, type EnvelopeAxes } from './envelope-axes.ts';
import { figure, px } from './markup.ts';
import { pushedApart } from './place-strip.ts';

/** Offers of one device's strongest port. */
export interface OverlaidOffers {
  readonly letter: string;
  readonly name: string;
  readonly offers: readonly OfferBody[];
}

const [LEFT, TOP, HEIGHT] = [34, 26, 250];
const LINES = ['wide', 'wide long-dash', 'wide short-dash', 'med'] as const;

/** Offers of several devices on one chart: lettered circles at the fixed voltages, the upper edge of each range as a line with its letter at the end. */
export function offersOverlay(devices: readonly OverlaidOffers[], width: number): string {
  const axes = envelopeAxes(devices.flatMap((device) => device.offers));
  const [right, bottom] = [width - 40, HEIGHT - 44];
  const x = (volts: number): number => LEFT + (volts / axes.volts) * (right - LEFT);
  const y = (amps: number): number => bottom - (Math.min(amps, axes.amps) / axes.amps) * (bottom - TOP);
  const edges = devices.map((device, index) => rangeEdges(device, LINES[index] ?? 'med', x, y)).join('');
  return figure({
    id: 'offers-overlay',
    className: 'fig overlay',
    width,
    height: HEIGHT,
    title: 'Offers of the strongest port of each device, amperes over volts',
    description: devices.map((device) => `${device.letter} ${device.name}: ${device.offers.map(offerWords).join(', ')}`).join('. '),
    body: `${chartAxes(axes, right, bottom, x, y)}${edges}${fixedMarks(devices, x, y)}`,
  });
}

function chartAxes(axes: EnvelopeAxes, right: number, bottom: number, x: (volts: number) => number, y: (amps: number) => number): string {
  const amps = Array.from({ length: Math.floor(axes.amps) }, (_, index) => index + 1);
  return (
    `<path class="grid-line" d="${amps.map((value) => `M${LEFT} ${px(y(value))}H${px(right)}`).join('')}"/>` +
    `<path class="med" d="M${LEFT} ${TOP}V${px(bottom)}H${px(right)}"/>` +
    `<path class="thin" d="${axes.ticks.map((volts) => `M${px(x(volts))} ${px(bottom)}v5`).join('')}"/>` +
    axes.ticks.map((volts) => `<text class="num mid" x="${px(x(volts))}" y="${px(bottom + 21)}">${String(volts)}</text>`).join('') +
    amps.map((value) => `<text class="num end" x="${LEFT - 7}" y="${px(y(value) + 5)}">${String(value)}</text>`).join('') +
    `<text x="0" y="12">A</text><text class="end" x="${px(right)}" y="${px(bottom + 39)}">V</text>`
  );
}

/** Devices that offer the same current at the same voltage stand side by side over the true place. */
function fixedMarks(devices: readonly OverlaidOffers[], x: (volts: number) => number, y: (amps: number) => number): string {
  const marks = devices.flatMap(({ letter, offers }) =>
    offers.flatMap((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? [{ letter, volts: offer.volts, amps: offer.amps }] : [])),
  );
  return [...Map.groupBy(marks, (mark) => String(mark.volts))]
    .flatMap(([, atVolts]) => {
      const rows = Map.groupBy(atVolts, (mark) => Math.round(mark.amps * 4));
      const stems = Math.max(...atVolts.map((mark) => mark.amps));
      const first = atVolts[0];
      if (first === undefined) return [];
      const stem = `<path class="faint" d="M${px(x(first.volts))} ${px(y(0))}V${px(y(stems))}"/>`;
      const circles = [...rows.values()].flatMap((row) => {
        const places = pushedApart(row.map((mark) => x(mark.volts)), 18, 0, 10_000); // prettier-ignore
        return row.map((mark, index) => circle(mark.letter, places[index] ?? 0, y(mark.amps)));
      });
      return [stem, ...circles];
    })
    .join('');
}

function circle(letter: string, x: number, y: number): string {
  return `<circle class="letter" cx="${px(x)}" cy="${px(y)}" r="8.5"/><text class="mid letter-text" x="${px(x)}" y="${px(y + 4.5)}">${letter}</text>`;
}

function rangeEdges(
  { letter, offers }: OverlaidOffers,
  className: string,
  x: (volts: number) => number,
  y: (amps: number) => number,
): string {
  return offers
    .map((offer) => {
      const points = edgeOf(offer);
      const last = points.at(-1);
      if (last === undefined) return '';
      const path = points.map(([volts, amps], index) => `${index === 0 ? 'M' : 'L'}${px(x(volts))} ${px(y(amps))}`).join('');
      return `<path class="${className}" d="${path}"/><text class="num" x="${px(x(last[0]) + 5)}" y="${px(y(last[1]) - 6)}">${letter}</text>`;
    })
    .join('');
}

/** EPR AVS never gives more. USB PD R3.2 V1.1, Table 10.12. */
const EPR_AVS_AMPS = 5;

function edgeOf(offer: OfferBody): readonly (readonly [number, number])[] {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return [];
    case 'variable':
    case 'PPS':
      return [[offer.minVolts, offer.amps], [offer.maxVolts, offer.amps]]; // prettier-ignore
    case 'SPR AVS':
      return [[9, offer.ampsTo15V], [15, offer.ampsTo15V], ...(offer.ampsTo20V === null ? [] : ([[15, offer.ampsTo20V], [20, offer.ampsTo20V]] as const))]; // prettier-ignore
    case 'EPR AVS':
    case 'battery':
      return Array.from({ length: 25 }, (_, index) => {
        const volts = offer.minVolts + ((offer.maxVolts - offer.minVolts) * index) / 24;
        return [volts, Math.min(EPR_AVS_AMPS, offer.watts / volts)] as const;
      });
  }
}

function offerWords(offer: OfferBody): string {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return `${String(offer.volts)} V ${String(offer.amps)} A`;
    case 'variable':
    case 'PPS':
      return `${offer.kind} ${String(offer.minVolts)} to ${String(offer.maxVolts)} V ${String(offer.amps)} A`;
    case 'SPR AVS':
      return `AVS 9 to ${offer.ampsTo20V === null ? '15' : '20'} V`;
    case 'EPR AVS':
    case 'battery':
      return `${offer.kind} ${String(offer.minVolts)} to ${String(offer.maxVolts)} V ${String(offer.watts)} W`;
  }
}
