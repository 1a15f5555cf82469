import { line } from 'd3-shape';
import { nominalPpsVolts } from '../usb-pd/offer-watts.ts';
import type { OfferBody } from '../usb-pd/offer.ts';
import { axesMarkup, envelopePlace, ENVELOPE_HEIGHT, ENVELOPE_WIDTH, type EnvelopeAxes, type EnvelopePlace } from './envelope-axes.ts';
import { figure, px } from './markup.ts';
import { EPR_AVS_AMPS } from '../usb-pd/current-at.ts';

/** One port's offers on axes that all ports of its device share. */
export interface OfferEnvelope {
  /** Makes the ids of title and description; unique on the page. */
  readonly id: string;
  readonly port: string;
  /** Rated power in watts; null where nobody states one. */
  readonly watts: number | null;
  readonly offers: readonly OfferBody[];
  /** Offers in words, for readers of text. */
  readonly description: string;
  readonly axes: EnvelopeAxes;
}

/**
 * What a port can supply over voltage: a stem and a square for each fixed voltage with its amperes, a hatched field for each range with
 * its constant-power edge, and the rated power as a dash-dot curve with its watts outside at the right. An SVG of its own, styled by classes.
 */
export function offerEnvelope({ id, port, watts, offers, description, axes }: OfferEnvelope): string {
  const place = envelopePlace(axes);
  const fields = offers.map((offer) => fieldMarkup(offer, place)).join('');
  const body = `${fields}${axesMarkup(place)}${watts === null ? '' : ratedCurve(watts, place)}${stems(offers, place)}`;
  const title = `Offers of ${port}, amperes over volts`;
  return figure({ id, className: 'fig envelope', width: ENVELOPE_WIDTH, height: ENVELOPE_HEIGHT, title, description, body });
}

/** Amperes over volts along the top of a range. */
type Edge = readonly (readonly [number, number])[];

function fieldMarkup(offer: OfferBody, place: EnvelopePlace): string {
  const edge = edgeOf(offer);
  const [first] = edge;
  const last = edge.at(-1);
  if (first === undefined || last === undefined) return '';
  const corners: Edge = [[first[0], 0], ...edge, [last[0], 0]];
  const outline = line()(corners.map(([volts, amps]) => onPlace(place, volts, amps)));
  return `<path class="${offer.kind === 'PPS' || offer.kind === 'variable' ? 'field' : 'field across'}" d="${outline ?? ''}"/>`;
}

function onPlace({ x, y, axes }: EnvelopePlace, volts: number, amps: number): [number, number] {
  return [round(x(volts)), round(y(Math.min(amps, axes.amps)))];
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function edgeOf(offer: OfferBody): Edge {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return [];
    case 'variable':
      return [
        [offer.minVolts, offer.amps],
        [offer.maxVolts, offer.amps],
      ];
    case 'PPS': {
      const watts = offer.powerLimited === true ? nominalPpsVolts(offer.maxVolts) * offer.amps : Infinity;
      return powerEdge(offer.minVolts, offer.maxVolts, offer.amps, watts);
    }
    case 'EPR AVS':
      return powerEdge(offer.minVolts, offer.maxVolts, EPR_AVS_AMPS, offer.watts);
    case 'battery':
      return powerEdge(offer.minVolts, offer.maxVolts, Infinity, offer.watts);
    case 'SPR AVS': {
      const low: Edge = [
        [9, offer.ampsTo15V],
        [15, offer.ampsTo15V],
      ];
      if (offer.ampsTo20V === null) return low;
      return [...low, [15, offer.ampsTo20V], [20, offer.ampsTo20V]];
    }
  }
}

const CURVE_STEPS = 24;

/** Level at the current, then falling where the power ends it. */
function powerEdge(from: number, to: number, amps: number, watts: number): Edge {
  const knee = Math.min(to, Math.max(from, watts / amps));
  const level: Edge = [
    [from, Math.min(amps, watts / from)],
    [knee, Math.min(amps, watts / knee)],
  ];
  return knee >= to ? level : [...level, ...curve(knee, to, watts).slice(1)];
}

function curve(from: number, to: number, watts: number): Edge {
  return Array.from({ length: CURVE_STEPS + 1 }, (_, index) => {
    // Steps grow with the voltage, as the curve is steepest at its low end.
    const volts = from * (to / from) ** (index / CURVE_STEPS);
    return [volts, watts / volts] as const;
  });
}

function ratedCurve(watts: number, place: EnvelopePlace): string {
  const { axes, x, y } = place;
  const from = watts / axes.amps;
  if (from >= axes.volts) return '';
  const path = line()(curve(from, axes.volts, watts).map(([volts, amps]) => onPlace(place, volts, amps)));
  const label = `${String(Math.round(watts * 10) / 10)}\u00a0W`;
  return `<path class="centre rated" d="${path ?? ''}"/><text class="num" x="${px(x(axes.volts) + 6)}" y="${px(y(watts / axes.volts) + 5)}">${label}</text>`;
}

/** Room of one digit and height of a line of the amperes above a square, in pixels. */
const DIGIT = 8.4;
const LINE = 15;

interface StemLabel {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

/** Stems with squares; a label that would run into the one before stands a line higher. */
function stems(offers: readonly OfferBody[], { x, y }: EnvelopePlace): string {
  const fixed = offers
    .flatMap((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? [{ volts: offer.volts, amps: offer.amps }] : []))
    .sort((one, other) => one.volts - other.volts || one.amps - other.amps);
  const labels: StemLabel[] = [];
  return fixed
    .map(({ volts, amps }) => {
      const [at, top] = [x(volts), y(amps)];
      const words = String(Math.round(amps * 100) / 100);
      const half = (words.length * DIGIT) / 2;
      const own = { left: at - half, right: at + half };
      const crowding = labels.filter((label) => label.right > own.left - 2 && label.left < own.right + 2);
      const level = crowding.reduce((lowest, label) => (Math.abs(label.y - lowest) < LINE ? label.y - LINE : lowest), top - 9);
      labels.push({ ...own, y: level });
      return `<path class="wide" d="M${px(at)} ${px(y(0))}V${px(top)}"/><rect class="solid" x="${px(at - 4.5)}" y="${px(top - 4.5)}" width="9" height="9"/><text class="num mid amps" x="${px(at)}" y="${px(level)}">${words}</text>`;
    })
    .join('');
}
