import type { Allocation, Entry, Port, Share, Sharing } from '../../src/entry/entry.ts';
import type { Quantity } from '../../src/units/quantity.ts';

/** Watts as an author writes them: "37.5 W". */
export function watts(written: string): Quantity<'power'> {
  const number = written.replace(' W', '');
  const nominal = Number(number);
  const decimals = (number.split('.')[1] ?? '').length;
  return {
    dimension: 'power',
    low: nominal,
    nominal,
    high: nominal,
    bound: 'value',
    qualifier: null,
    significant: number.replace('.', '').replace(/^0+/, '').length,
    resolution: 10 ** -decimals,
    waveform: null,
    written,
    unit: 'W',
    span: { start: 0, end: written.length },
  };
}

/** A port with its own limit, or none stated. */
export function outputPort(id: string, power: string | null, more: Partial<Port> = {}): Port {
  return {
    id,
    connector: 'USB-C',
    direction: 'output',
    power: power === null ? null : { quantity: watts(power), evidence: 'printed', path: ['ports', id, 'power'] },
    peak: null,
    powerAtInput: [],
    offers: [],
    accepts: [],
    revision: null,
    readThrough: null,
    protocols: [],
    evidence: 'printed',
    note: null,
    path: ['ports', id],
    ...more,
  };
}

/** One row: ports of each share joined by a slash for a pool, as { 'C1': '45 W', 'C2/A1': '15 W' }. */
export function allocation(shares: Readonly<Record<string, string>>, more: Partial<Allocation> = {}): Allocation {
  const read = Object.entries(shares).map(([ports, power]): Share => ({ ports: ports.split('/'), power: watts(power) }));
  const ports = read.flatMap((share) => share.ports);
  return {
    ports,
    shares: read,
    evidence: 'printed',
    order: null,
    asked: null,
    advertised: null,
    note: null,
    path: ['sharing', 'allocations', ports.join(' + ')],
    ...more,
  };
}

export function sharing(allocations: readonly Allocation[], more: Partial<Sharing> = {}): Sharing {
  return {
    total: null,
    policy: null,
    alike: [],
    minimum: {},
    allocations,
    steps: {},
    onNewPlug: null,
    onNewPlugAt: {},
    priority: null,
    note: null,
    path: ['sharing'],
    ...more,
  };
}

/** An otherwise empty entry with these ports and this sharing block. */
export function entryWithPorts(ports: readonly Port[], block: Sharing | null): Entry {
  return {
    slug: 'invented',
    file: 'teardowns/invented/index.md',
    number: null,
    title: 'Invented',
    summary: null,
    status: 'draft',
    published: null,
    author: null,
    device: { maker: 'Larkmoor', name: 'Invented', model: null, kind: 'wall charger', released: null, price: null },
    sample: { obtained: null, lot: null, serial: null, firmware: null, note: null },
    nameplate: {
      input: null,
      inputs: [],
      output: [],
      total: null,
      peak: null,
      totalAtInput: [],
      capacity: null,
      outputCapacity: null,
      marks: [],
      evidence: 'printed',
      note: null,
    },
    body: {
      size: null,
      volume: null,
      mass: null,
      basis: 'cased',
      prongs: null,
      cable: null,
      inlet: null,
      plug: null,
      material: null,
      alsoStated: [],
      note: null,
    },
    ports,
    sharing: block,
    stages: [],
    parts: [],
    insulation: [],
    efficiency: [],
    measurements: [],
    instruments: {},
    claims: [],
    logs: [],
    photos: [],
    answers: [],
    corrections: [],
    formerAddresses: [],
    recall: null,
    sources: [],
    derating: null,
    discharged: null,
    poweredOpen: null,
    cellsOpened: null,
  };
}
