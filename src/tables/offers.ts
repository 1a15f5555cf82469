import type { Port } from '../entry/entry.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Value } from '../values/value.ts';
import { counted, mono, numberColumn, rowId, textColumn, valueCell } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'offers';
const TITLE = 'Offers';

export const offers: TableDeclaration = { id: ID, title: TITLE, build };

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

/** Voltage, current and power of an offer; what it leaves open has no number. */
function numbersOf(offer: Offer, port: Port): [Cell, Cell, Cell] {
  const cell = (dimension: Dimension, low: number, high: number): Cell => valueCell(valueFor(dimension, low, high, offer, port));
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return [
        cell('voltage', offer.volts, offer.volts),
        cell('current', offer.amps, offer.amps),
        cell('power', offer.volts * offer.amps, offer.volts * offer.amps),
      ];
    case 'variable':
    case 'PPS':
      return [cell('voltage', offer.minVolts, offer.maxVolts), cell('current', offer.amps, offer.amps), limited(offer, cell)];
    case 'battery':
    case 'EPR AVS':
      return [
        cell('voltage', offer.minVolts, offer.maxVolts),
        { kind: 'missing', reason: 'power over voltage' },
        cell('power', offer.watts, offer.watts),
      ];
    case 'SPR AVS':
      return [
        cell('voltage', 9, offer.ampsTo20V === null ? 15 : 20),
        cell('current', offer.ampsTo20V ?? offer.ampsTo15V, offer.ampsTo15V),
        { kind: 'missing', reason: 'varies with voltage' },
      ];
  }
}

function limited(
  offer: Extract<Offer, { kind: 'variable' | 'PPS' }>,
  cell: (dimension: Dimension, low: number, high: number) => Cell,
): Cell {
  if (offer.kind === 'PPS' && offer.powerLimited === true) return { kind: 'missing', reason: 'limited to the port’s power' };
  return cell('power', offer.minVolts * offer.amps, offer.maxVolts * offer.amps);
}

/** A range is held as an interval around its upper end: the highest is what the offer is known by. */
function valueFor<D extends Dimension>(dimension: D, low: number, high: number, offer: Offer, port: Port): Value<D> {
  const at = offer.path.join('.');
  const evidence = port.evidence;
  const origin =
    evidence === 'assumed'
      ? ({
          evidence,
          reason: `${offer.written}, assumed by the author`,
          source: { title: 'The entry itself', section: at, standing: 'memory' },
        } as const)
      : ({ evidence, written: offer.written, at } as const);
  const exact = Math.round(high * 1e6) / 1e6;
  return { dimension, low: Math.min(low, exact), nominal: exact, high: exact, significant: 3, origin };
}
