import type { Port } from '../entry/entry.ts';
import { offerWatts } from '../usb-pd/offer-watts.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Value } from '../values/value.ts';
import { mono, numberColumn, rowId, textColumn, valueCell } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'offers';
const TITLE = 'Offers';

export const offers: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

function build({ entry }: TableInput): Table | null {
  const ports = entry.ports.filter((port) => port.direction !== 'input' && port.offers.length > 0);
  if (ports.length === 0) return null;
  const count = ports.reduce((sum, port) => sum + port.offers.length, 0);
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(count, 'offer')} of ${counted(ports.length, 'port')}, as text or as the tester’s 32-bit word.`,
    columns: [
      textColumn('offer', 'Offer'),
      textColumn('kind', 'Kind'),
      numberColumn('voltage', 'Voltage', 'V'),
      numberColumn('current', 'Current', 'A'),
      numberColumn('power', 'Power', 'W'),
    ],
    groups: ports.map(groupOf),
    notes: [],
  };
}

function groupOf(port: Port): RowGroup {
  const stated = port.power === null ? '' : `, stated ${port.power.quantity.written}`;
  return {
    id: rowId(port.id),
    title: `${port.id}, ${port.connector}${stated}`,
    glyph: null,
    rows: port.offers.map((offer, index) => rowOf(offer, port, index)),
  };
}

function rowOf(offer: Offer, port: Port, index: number): Row {
  const id = `${rowId(port.id)}-${index + 1}`;
  return { id, cells: [mono(offer.written), { kind: 'text', text: offer.kind }, ...numbersOf(offer, port)] };
}

/** Voltage, current and power of an offer; a range stays a range, and what the offer leaves open has no number. */
function numbersOf(offer: Offer, port: Port): [Cell, Cell, Cell] {
  const cell = (dimension: Dimension, number: number): Cell => valueCell(exact(dimension, number, offer, port));
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return [cell('voltage', offer.volts), cell('current', offer.amps), cell('power', offer.volts * offer.amps)];
    case 'variable':
    case 'PPS': {
      const power: Cell =
        offer.kind === 'PPS' && offer.powerLimited === true
          ? { kind: 'missing', reason: 'limited to the port’s power' }
          : range(offer.minVolts * offer.amps, offer.maxVolts * offer.amps);
      return [range(offer.minVolts, offer.maxVolts), cell('current', offer.amps), power];
    }
    case 'battery':
    case 'EPR AVS':
      return [range(offer.minVolts, offer.maxVolts), { kind: 'missing', reason: 'power over voltage' }, cell('power', offer.watts)];
    case 'SPR AVS':
      return [
        range(9, offer.ampsTo20V === null ? 15 : 20),
        offer.ampsTo20V === null ? cell('current', offer.ampsTo15V) : range(offer.ampsTo20V, offer.ampsTo15V),
        cell('power', offerWatts(offer)),
      ];
  }
}

/** "3.3–21": ends as written, in the unit of the column. */
function range(low: number, high: number): Cell {
  const [from, to] = [Math.min(low, high), Math.max(low, high)].map((number) => String(Number(number.toPrecision(4))));
  return { kind: 'text', text: from === to ? (to ?? '') : `${from ?? ''}–${to ?? ''}`, mono: true };
}

/** The method of the bench by which the offers of a port were read. */
function methodOf({ madeBy }: Port): { readonly method?: string } {
  return madeBy?.method === undefined ? {} : { method: madeBy.method };
}

/** Offers come in steps of the protocol, so a number has the digits that it is written with, and three at least. */
function exact<D extends Dimension>(dimension: D, number: number, offer: Offer, port: Port): Value<D> {
  const at = offer.path.join('.');
  const { evidence } = port;
  const source = { title: 'The entry itself, marked as assumed', section: at, standing: 'memory' } as const;
  const origin =
    evidence === 'assumed'
      ? ({ evidence, reason: `${offer.written}, assumed by the author`, source } as const)
      : ({ evidence, written: offer.written, at, ...(evidence === 'measured' ? methodOf(port) : {}) } as const);
  const nominal = Number(number.toPrecision(12));
  const written = Number.isFinite(nominal) ? nominal.toString().replace('.', '').replace(/^0+/, '').length : 1;
  return { dimension, low: nominal, nominal, high: nominal, significant: Math.max(3, written), origin };
}
