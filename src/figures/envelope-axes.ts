import { scaleLinear } from 'd3-scale';
import type { OfferBody } from '../usb-pd/offer.ts';
import { px } from './markup.ts';

/** Ends of both axes, the same for all ports of a device. Volts and amperes. */
export interface EnvelopeAxes {
  readonly volts: number;
  readonly amps: number;
  /** Voltages that the axis names. */
  readonly ticks: readonly number[];
}

/** Places on the drawing, 1 : 1 in pixels of its own width. */
export interface EnvelopePlace {
  readonly x: (volts: number) => number;
  readonly y: (amps: number) => number;
  readonly axes: EnvelopeAxes;
}

export const ENVELOPE_WIDTH = 400;
export const ENVELOPE_HEIGHT = 216;
const LEFT = 30;
/** The rated power is written outside the field at the right. */
const RIGHT = 338;
const TOP = 26;
const BOTTOM = 186;

const SPR_AXIS = 22;
const EPR_AXIS = 50;
const AMPS_AXIS = 6;

/** Room that the number of a tick takes, in pixels. */
const TICK_ROOM = 24;

/** 0 to 22 V, or 0 to 50 V where any port goes above; 0 to 6 A, or more where a plain output carries more. */
export function envelopeAxes(offers: readonly OfferBody[]): EnvelopeAxes {
  const top = Math.max(0, ...offers.map(highestVolts));
  const volts = top <= SPR_AXIS ? SPR_AXIS : Math.max(EPR_AXIS, top * 1.04);
  const amps = Math.max(AMPS_AXIS, Math.ceil(Math.max(0, ...offers.map(highestAmps)) * 1.15));
  const fixed = offers.flatMap((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? [offer.volts] : []));
  return { volts, amps, ticks: roomyTicks([...new Set([...COMMON_TICKS, ...fixed])], volts) };
}

/** In the order in which they may take the room. */
const COMMON_TICKS = [5, 20, 9, 15, 28, 48, 36] as const;

function roomyTicks(wanted: readonly number[], end: number): readonly number[] {
  const x = scaleLinear([0, end], [LEFT, RIGHT]);
  const taken: number[] = [0];
  for (const volts of wanted) {
    // The unit stands under the right end.
    if (x(volts) > RIGHT - 4 || taken.some((other) => Math.abs(x(other) - x(volts)) < TICK_ROOM)) continue;
    taken.push(volts);
  }
  return taken.sort((one, other) => one - other);
}

function highestVolts(offer: OfferBody): number {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return offer.volts;
  return offer.kind === 'SPR AVS' ? 20 : offer.maxVolts;
}

function highestAmps(offer: OfferBody): number {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
    case 'variable':
    case 'PPS':
      return offer.amps;
    case 'SPR AVS':
      return Math.max(offer.ampsTo15V, offer.ampsTo20V ?? 0);
    case 'EPR AVS':
    case 'battery':
      return 5;
  }
}

export function envelopePlace(axes: EnvelopeAxes): EnvelopePlace {
  return { x: scaleLinear([0, axes.volts], [LEFT, RIGHT]), y: scaleLinear([0, axes.amps], [BOTTOM, TOP]), axes };
}

/** Grid of amperes, both axes with their ticks, and the unit of each. */
export function axesMarkup({ x, y, axes }: EnvelopePlace): string {
  const step = axes.amps <= 8 ? 1 : Math.ceil(axes.amps / 6);
  const amps = Array.from({ length: Math.floor(axes.amps / step) }, (_, index) => index * step);
  const rows = amps.map((at) => {
    const line = at === 0 ? '' : `<path class="grid" d="M${px(LEFT)} ${px(y(at))}H${px(RIGHT)}"/>`;
    return `${line}<path class="thin" d="M${px(LEFT - 5)} ${px(y(at))}h5"/><text class="num end" x="${px(LEFT - 9)}" y="${px(y(at) + 5)}">${at}</text>`;
  });
  const columns = axes.ticks.map((at) => {
    const number = String(Math.round(at * 10) / 10);
    return `<path class="thin" d="M${px(x(at))} ${px(BOTTOM)}v5"/><text class="num mid" x="${px(x(at))}" y="${px(BOTTOM + 20)}">${number}</text>`;
  });
  const frame = `<path class="med" d="M${px(LEFT)} ${px(TOP - 12)}V${px(BOTTOM)}H${px(RIGHT)}"/>`;
  const units = `<text class="num" x="${px(LEFT + 7)}" y="${px(TOP - 6)}">A</text><text class="num" x="${px(RIGHT + 4)}" y="${px(BOTTOM + 20)}">V</text>`;
  return `${rows.join('')}${columns.join('')}${frame}${units}`;
}
