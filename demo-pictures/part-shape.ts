import type { Part } from '../src/entry/entry.ts';

/** How a part looks from above. */
export type ShapeKind =
  | 'can'
  | 'lying can'
  | 'wound core'
  | 'ring choke'
  | 'standing choke'
  | 'drum'
  | 'power inductor'
  | 'leadless'
  | 'gull wings'
  | 'chip'
  | 'film'
  | 'disc'
  | 'fuse'
  | 'bridge'
  | 'diode'
  | 'tab'
  | 'USB-C'
  | 'USB-A'
  | 'cell'
  | 'strip';

/** Plan of a part in millimetres, leads included, before it is turned. */
export interface PartShape {
  readonly kind: ShapeKind;
  readonly length: number;
  readonly width: number;
  /** Height over the board, for its shadow. */
  readonly height: number;
  /** Which side of a board it takes: leads through it, or soldered to its surface. */
  readonly mount: 'through' | 'surface';
}

/** Usual sizes of the trade; where an entry says a package, that wins. Common practice: they shape a drawing and decide nothing. */
const BY_ROLE: Readonly<Record<string, PartShape>> = {
  'input-fuse': through('fuse', 8.4, 3.6, 4),
  varistor: through('disc', 10, 4.4, 12),
  'ntc-thermistor': through('disc', 8, 3.8, 10),
  // With their leads: what bridges the insulation lands on either side of it.
  'y-capacitor': through('disc', 11.4, 4, 9),
  'pfc-diode': surface('tab', 6.6, 9.5, 2.3),
  'bypass-diode': surface('diode', 5.4, 3.6, 2.3),
  'transient-suppressor': surface('diode', 5.4, 3.6, 2.3),
  'rectifier-diode': surface('tab', 4.6, 6.5, 1.1),
  'clamp-diode': surface('diode', 5, 2.6, 2.2),
  'auxiliary-rectifier': surface('diode', 5, 2.6, 2.2),
  optocoupler: surface('gull wings', 11.4, 4.6, 2.1),
  'digital-isolator': surface('gull wings', 6, 4.9, 1.6),
  'temperature-sensor': surface('chip', 1.6, 0.8, 0.5),
  microcontroller: surface('leadless', 3, 3, 0.8),
  'protection-ic': surface('gull wings', 2.9, 2.8, 1.1),
  'resonant-capacitor': through('film', 13, 6, 12),
  cell: through('cell', 70, 21, 21),
};

/** Edge of a square leadless package by its number of lands. */
const LEADLESS_EDGE: Readonly<Record<string, number>> = { 16: 3, 20: 3.5, 24: 4, 28: 4, 32: 5, 40: 6 };

/** The plan of a part, or null for what is not seen as a body: potting, springs, what is taped away, what is not fitted. */
export function shapeOf(part: Part): PartShape | null {
  if (part.fitting !== 'fitted' || part.role === 'potting' || part.role === 'insulation-barrier') return null;
  if (/in the tip|tip and springs|taped|sleeve, over/u.test(part.note ?? '')) return null;
  return packageShape(part) ?? windingShape(part) ?? capacitorShape(part) ?? connectorShape(part) ?? remaining(part);
}

function packageShape(part: Part): PartShape | null {
  const text = part.package ?? '';
  const dfn = /^DFN (\d+)×(\d+)/u.exec(text);
  if (dfn !== null) return surface('leadless', Number(dfn[2]), Number(dfn[1]), 0.9);
  const qfn = /^QFN-(\d+)/u.exec(text);
  if (qfn !== null) {
    const edge = LEADLESS_EDGE[qfn[1] ?? ''] ?? 4;
    return surface('leadless', edge, edge, 0.8);
  }
  if (text === 'SO-16') return surface('gull wings', 9.9, 6, 1.6);
  if (text === 'SO-8') return surface('gull wings', 4.9, 6, 1.6);
  if (text === 'TO-252') return surface('tab', 6.6, 9.5, 2.3);
  if (text === 'TO-277') return surface('tab', 4.6, 6.5, 1.1);
  const chip = { '0805': [2, 1.25], '1206': [3.2, 1.6], '2512': [6.4, 3.2] }[text];
  return chip === undefined ? null : surface('chip', chip[0] ?? 2, chip[1] ?? 1, 0.7);
}

function windingShape(part: Part): PartShape | null {
  const core = /\b(PQ|RM|EE|ATQ) ?(\d+)/u.exec(part.package ?? '');
  if (core !== null) {
    const edge = Number(core[2]);
    if (core[1] === 'RM') return through('wound core', 20, 17, 16);
    if (core[1] === 'EE') return through('wound core', 16.5, 14, 14);
    return through('wound core', edge + 1, edge * (core[1] === 'ATQ' ? 0.87 : 0.76), 20);
  }
  const henries = part.rating?.quantities.find((quantity) => quantity.dimension === 'inductance')?.nominal ?? 0;
  if (part.role === 'common-mode-choke') return henries >= 5e-3 ? through('standing choke', 13, 6.5, 14) : through('ring choke', 9, 9, 5);
  if (part.role === 'differential-choke') return henries < 1e-5 ? surface('power inductor', 7, 6.6, 5) : through('drum', 6.5, 6.5, 9);
  if (part.role !== 'inductor') return null;
  const edge = Number(/^(\d+) × \d+ mm/u.exec(part.package ?? '')?.[1] ?? 7);
  return surface('power inductor', edge, edge * 0.94, 5);
}

function capacitorShape(part: Part): PartShape | null {
  if (!/capacitor$/u.test(part.role)) return null;
  const can = /([\d.]+) × ([\d.]+) mm/u.exec(part.package ?? '');
  if (can !== null) {
    const [diameter, length] = [Number(can[1]), Number(can[2])];
    return /on its side/u.test(part.note ?? '')
      ? through('lying can', length, diameter, diameter)
      : through('can', diameter, diameter, length);
  }
  const farads = part.rating?.quantities.find((quantity) => quantity.dimension === 'capacitance')?.nominal ?? 0;
  if (part.role === 'x-capacitor') return through('film', farads > 2.5e-7 ? 18 : farads > 1.5e-7 ? 15 : 13, farads > 4e-7 ? 8.5 : 6, 12);
  if (part.role === 'filter-capacitor') return through('film', farads > 5e-7 ? 18 : 13, farads > 5e-7 ? 8 : 6, 13);
  if (part.role === 'y-capacitor' || part.role === 'resonant-capacitor') return null;
  if (part.maker === null) return surface('chip', 3.2, 1.6, 1.4);
  const polymer = part.rating?.marks.some((mark) => mark.text === 'polymer') ?? false;
  const diameter = polymer ? (farads > 4e-4 ? 10 : farads > 1.5e-4 ? 8 : 6.3) : 5;
  return through('can', diameter, diameter, 10);
}

function connectorShape(part: Part): PartShape | null {
  if (part.role !== 'connector') return null;
  const note = part.note ?? '';
  if (/USB-A/u.test(note)) return through('USB-A', 14, 13.1, 6);
  if (/USB-C/u.test(note)) return /vertical/u.test(note) ? through('USB-C', 6.5, 8.94, 10) : through('USB-C', 7.3, 8.94, 3.3);
  return through('strip', 8, 4, 0.3);
}

function remaining(part: Part): PartShape {
  const known = BY_ROLE[part.role];
  if (known !== undefined) return known;
  if (part.role === 'heat-spreader') return through('strip', 26, 1.6, 14);
  if (part.role === 'bridge-rectifier') return surface('bridge', 8.4, 6.4, 2.5);
  if (/resistor$/u.test(part.role)) return surface('chip', 1.6, 0.8, 0.5);
  if (/switch$|rectifier$/u.test(part.role)) return surface('leadless', 3.3, 3.3, 0.9);
  return surface('gull wings', 2.9, 2.8, 1.1);
}

function through(kind: ShapeKind, length: number, width: number, height: number): PartShape {
  return { kind, length, width, height, mount: 'through' };
}

function surface(kind: ShapeKind, length: number, width: number, height: number): PartShape {
  return { kind, length, width, height, mount: 'surface' };
}
