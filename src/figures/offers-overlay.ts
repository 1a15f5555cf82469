import type { OfferBody } from '../usb-pd/offer.ts';
import { envelopeAxes, type EnvelopeAxes } from './envelope-axes.ts';
import { figure, px } from './markup.ts';
import { EPR_AVS_AMPS } from '../usb-pd/current-at.ts';

/** Offers of one device's strongest port. */
export interface OverlaidOffers {
  readonly letter: string;
  readonly name: string;
  readonly offers: readonly OfferBody[];
}

const [LEFT, TOP, HEIGHT] = [34, 26, 250];
const LINES = ['wide', 'wide long-dash', 'wide short-dash', 'med'] as const;

/** Offers of several devices on one chart: a square with letters at each fixed voltage, the upper edge of each range as a line with its letters at the end. */
export function offersOverlay(devices: readonly OverlaidOffers[], width: number): string {
  const axes = envelopeAxes(devices.flatMap((device) => device.offers));
  const [right, bottom] = [width - 40, HEIGHT - 44];
  const x = (volts: number): number => LEFT + (volts / axes.volts) * (right - LEFT);
  const y = (amps: number): number => bottom - (Math.min(amps, axes.amps) / axes.amps) * (bottom - TOP);
  return figure({
    id: 'offers-overlay',
    className: 'fig overlay',
    width,
    height: HEIGHT,
    title: 'Offers of the strongest port of each device, amperes over volts',
    description: devices.map((device) => `${device.letter} ${device.name}: ${device.offers.map(offerWords).join(', ')}`).join('. '),
    body: `${chartAxes(axes, right, bottom, x, y)}${rangeEdges(devices, x, y)}${fixedMarks(devices, x, y)}`,
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

/** A stem and a square for each fixed voltage and current, with the letters of all devices that have it above. */
function fixedMarks(devices: readonly OverlaidOffers[], x: (volts: number) => number, y: (amps: number) => number): string {
  const letters = new Map<string, { volts: number; amps: number; letters: string }>();
  for (const { letter, offers } of devices) {
    for (const offer of offers) {
      if (offer.kind !== 'fixed' && offer.kind !== 'plain') continue;
      const key = `${String(offer.volts)} ${String(offer.amps)}`;
      const held = letters.get(key);
      if (held === undefined) letters.set(key, { volts: offer.volts, amps: offer.amps, letters: letter });
      else if (!held.letters.includes(letter)) held.letters += letter;
    }
  }
  const marks = [...letters.values()];
  const stems = marks.map(({ volts, amps }) => `M${px(x(volts))} ${px(y(0))}V${px(y(amps))}`);
  const squares = marks.map(({ volts, amps }) => `M${px(x(volts) - 4.5)} ${px(y(amps) - 4.5)}h9v9h-9Z`);
  const words = marks.map(
    (mark) => `<text class="num mid halo" x="${px(x(mark.volts))}" y="${px(y(mark.amps) - 10)}">${mark.letters}</text>`,
  );
  return `<path class="thin" d="${stems.join('')}"/><path class="solid" d="${squares.join('')}"/>${words.join('')}`;
}

/** Upper edges of ranges; devices with the same range share a line and its label. */
function rangeEdges(devices: readonly OverlaidOffers[], x: (volts: number) => number, y: (amps: number) => number): string {
  const edges = new Map<string, { index: number; letters: string; label: readonly [number, number] }>();
  for (const [index, { letter, offers }] of devices.entries()) {
    for (const offer of offers) {
      const points = edgeOf(offer);
      const last = points.at(-1);
      if (last === undefined) continue;
      const path = points.map(([volts, amps], at) => `${at === 0 ? 'M' : 'L'}${px(x(volts))} ${px(y(amps))}`).join('');
      const held = edges.get(path);
      if (held === undefined) edges.set(path, { index, letters: letter, label: [x(last[0]) + 7, y(last[1]) + 5] });
      else if (!held.letters.includes(letter)) held.letters += letter;
    }
  }
  return [...edges]
    .map(
      ([path, { index, letters, label }]) =>
        `<path class="${LINES[index] ?? 'med'}" d="${path}"/><text class="num halo" x="${px(label[0])}" y="${px(label[1])}">${letters}</text>`,
    )
    .join('');
}

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
