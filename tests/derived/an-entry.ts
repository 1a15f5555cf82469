import type { Entry, Fact, Part, Port, Stage } from '../../src/entry/entry.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import type { Quantity, Rating, SupplyInput } from '../../src/units/quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';
import { readRating } from '../../src/units/read-rating.ts';
import type { Offer } from '../../src/usb-pd/offer.ts';
import { entryWithPorts, outputPort } from '../sharing/entry-with-ports.ts';

/** A quantity as an author writes it. */
export function quantity<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  const reading = readQuantity(text, dimension);
  if (!reading.ok) throw new Error(`${text}: ${reading.remarks.map((remark) => remark.message).join('; ')}`);
  return reading.value;
}

export function fact<D extends Dimension>(text: string, dimension: D, path: string, evidence: Fact['evidence'] = 'measured'): Fact<D> {
  return { quantity: quantity(text, dimension), evidence, path: path.split('.') };
}

export function rating(text: string): Rating {
  const reading = readRating(text, { bareNumber: null });
  if (!reading.ok) throw new Error(`${text}: ${reading.remarks.map((remark) => remark.message).join('; ')}`);
  return reading.value;
}

/** A part under a stage: part('Q1', 'pfc-switch', 'pfc', '700 V, 140 mΩ'). Several references are joined by a comma. */
export function part(references: string, role: string, stage: string, text: string | null, more: Partial<Part> = {}): Part {
  const read = text === null ? null : rating(text);
  return {
    references: references.split(', '),
    role,
    stage,
    alsoIn: [],
    maker: null,
    number: null,
    marking: null,
    package: null,
    technology: null,
    rating: read,
    evidence: 'marked',
    count: read?.count ?? 1,
    arrangement: 'single',
    fitting: 'fitted',
    measured: null,
    alsoStated: [],
    datasheet: null,
    note: null,
    path: ['parts', stage, references, 'rating'],
    ...more,
  };
}

/** A stage: stage('pfc', 'boost-pfc', { bus: fact('392 V', 'voltage', 'stages.pfc.bus') }). */
export function stage(id: string, kind: string, parameters: Stage['parameters'] = {}, more: Partial<Stage> = {}): Stage {
  const wound = { turns: [], turnsEvidence: 'measured', turnsRatio: null, reset: null } as const;
  return { id, kind, mode: null, parameters, ...wound, cells: null, feeds: [], alsoStated: [], note: null, path: ['stages', id], ...more };
}

/** A port with fixed offers of volts and amperes. */
export function portWith(id: string, ...offers: readonly (readonly [volts: number, amps: number])[]): Port {
  const read = offers.map(([volts, amps], index): Offer => ({
    kind: 'fixed',
    volts,
    amps,
    written: `${volts} V ${amps} A`,
    word: null,
    path: ['ports', id, 'offers', index],
  }));
  return outputPort(id, null, { offers: read });
}

export function supply(kind: 'AC' | 'DC', volts: string, frequency: string | null = '50 Hz'): SupplyInput {
  const frequencies = frequency === null ? [] : [quantity(frequency, 'frequency')];
  return { kind, voltage: quantity(volts, 'voltage'), frequencies, current: null, power: null, written: volts };
}

/** An invented device with what a test is about. */
export function anEntry(input: SupplyInput | null, ports: readonly Port[], more: Partial<Entry> = {}): Entry {
  const empty = entryWithPorts(ports, null);
  return { ...empty, nameplate: { ...empty.nameplate, input, inputs: input === null ? [] : [input] }, ...more };
}
