import type { Entry, Part, Stage } from '../../src/entry/entry.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

/** What a corner is made of: highest and lowest supply, highest output, and the load. */
export interface Corner {
  readonly high: number;
  readonly low: number;
  readonly volts: number;
  readonly amps: number;
}

/** Lowest and highest of each part of a corner, and by how much it may become harder. */
export type CornerRange = Readonly<Record<keyof Corner, { readonly min: number; readonly max: number; readonly harder: number }>>;

/** One block with every role that its model has a stress for, and what the block is told. */
export interface Specimen {
  readonly kind: string;
  readonly name: string;
  readonly supply: 'AC' | 'DC';
  readonly stages: (corner: Corner) => readonly Stage[];
  readonly parts: readonly Part[];
  /** Voltages of its offers; 5 V and the highest where left out. */
  readonly offered?: (volts: number) => readonly number[];
  /** Corners that it is asked about; those of the mains or of a vehicle where left out. */
  readonly corners?: CornerRange;
  /** Quantities that physics lets fall when the output voltage rises, or when the supply does. */
  readonly mayFall?: { readonly withOutput?: readonly string[]; readonly withSupply?: readonly string[] };
}

const TURNS = { turns: [40, 8], feeds: ['C1'] } as const;
const CENTRE_TAP = { turns: [36, 4, 4], feeds: ['C1'] } as const;
const BUS = { bus: fact('100-420 V', 'voltage', 'b') };
const L = { L: fact('10 µH', 'inductance', 'l'), frequency: fact('300 kHz', 'frequency', 'f') };
const COIL = { Lm: fact('300 µH', 'inductance', 'l'), frequency: fact('80 kHz', 'frequency', 'f') };
const TANK = { Lr: fact('75 µH', 'inductance', 'x'), Cr: fact('22 nF', 'capacitance', 'x'), Lm: fact('450 µH', 'inductance', 'x') };

function rated(role: string, index: number, text = '1000 V 100 A'): Part {
  return part(`X${String(index)}`, role, 'main', text);
}

function partsFor(...roles: readonly string[]): readonly Part[] {
  return roles.map((role, index) => rated(role, index));
}

function alone(kind: string, parameters: Stage['parameters'] = {}, more: Partial<Stage> = { feeds: ['C1'] }): Specimen['stages'] {
  return () => [stage('main', kind, parameters, more)];
}

/** Bulk parts of any mains block, and the capacitance that the valley follows from. */
const MAINS_PARTS: readonly Part[] = [
  part('C90', 'bulk-capacitor', 'main', '150 µF 450 V'),
  part('D90', 'bridge-rectifier', 'main', '1000 V 10 A'),
];
const SECONDARY = ['synchronous-rectifier', 'output-capacitor', 'load-switch'] as const;
const FLYBACK_PARTS = [...MAINS_PARTS, ...partsFor('primary-switch', 'clamp-diode', 'clamp-switch', 'rectifier-diode', ...SECONDARY)];
const BUCK_PARTS = partsFor('buck-switch', 'synchronous-rectifier', 'input-capacitor', 'inductor', 'output-capacitor', 'load-switch');

function flyback(mode: string): Specimen {
  return { kind: 'flyback', name: mode, supply: 'AC', stages: alone('flyback', COIL, { ...TURNS, mode }), parts: FLYBACK_PARTS };
}

const AMPS = { min: 1, max: 3, harder: 2 };
export const MAINS_CORNERS: CornerRange = {
  high: { min: 264, max: 277, harder: 15 },
  low: { min: 95, max: 127, harder: 3 },
  volts: { min: 6, max: 28, harder: 6 },
  amps: AMPS,
};
export const DIRECT_CORNERS: CornerRange = {
  high: { min: 24, max: 40, harder: 15 },
  low: { min: 8, max: 12, harder: 3 },
  volts: { min: 6, max: 28, harder: 6 },
  amps: AMPS,
};
/** A buck only steps down, so the output stays below the lowest input. */
const BUCK_CORNERS: CornerRange = { ...DIRECT_CORNERS, low: { min: 22, max: 24, harder: 1 }, volts: { min: 6, max: 15, harder: 5 } };
/** A boost only steps up: one or two cells to 9 V and more. */
const BOOST_CORNERS: CornerRange = {
  ...DIRECT_CORNERS,
  high: { min: 6, max: 8, harder: 0 },
  low: { min: 3, max: 5, harder: 1 },
  volts: { min: 10, max: 20, harder: 6 },
};

export const SPECIMENS: readonly Specimen[] = [
  {
    kind: 'input-filter',
    name: 'input filter',
    supply: 'AC',
    stages: alone('input-filter', {}, {}),
    parts: [...MAINS_PARTS, ...partsFor('input-fuse')],
  },
  {
    kind: 'dc-input',
    name: 'DC input',
    supply: 'DC',
    stages: alone('dc-input', {}, {}),
    parts: partsFor('input-capacitor', 'load-switch', 'rectifier-diode'),
  },
  {
    kind: 'rectifier',
    name: 'bridge',
    supply: 'AC',
    stages: alone('rectifier', {}, {}),
    parts: [...MAINS_PARTS, ...partsFor('rectifier-diode', 'filter-capacitor')],
  },
  { kind: 'bulk-capacitor', name: 'bulk without PFC', supply: 'AC', stages: alone('bulk-capacitor', {}, {}), parts: MAINS_PARTS },
  {
    kind: 'boost-pfc',
    name: 'critical conduction',
    supply: 'AC',
    stages: alone('boost-pfc', BUS, {}),
    parts: [...MAINS_PARTS, ...partsFor('pfc-switch', 'pfc-diode', 'pfc-inductor', 'bypass-diode')],
  },
  {
    kind: 'boost-pfc',
    name: 'continuous conduction',
    supply: 'AC',
    stages: alone('boost-pfc', BUS, { mode: 'continuous conduction' }),
    parts: [...MAINS_PARTS, ...partsFor('pfc-switch', 'pfc-inductor')],
  },
  {
    kind: 'totem-pole-pfc',
    name: 'totem pole',
    supply: 'AC',
    stages: alone('totem-pole-pfc', BUS, {}),
    parts: [...MAINS_PARTS, ...partsFor('pfc-switch', 'synchronous-rectifier', 'pfc-inductor')],
  },
  flyback('quasi-resonant'),
  flyback('discontinuous conduction'),
  flyback('continuous conduction'),
  {
    kind: 'active-clamp-flyback',
    name: 'active clamp',
    supply: 'AC',
    stages: alone('active-clamp-flyback', COIL, TURNS),
    parts: [...MAINS_PARTS, ...partsFor('primary-switch', 'clamp-switch', 'clamp-capacitor', 'rectifier-diode', ...SECONDARY)],
  },
  {
    kind: 'asymmetrical-half-bridge-flyback',
    name: 'asymmetrical half bridge',
    supply: 'AC',
    stages: alone('asymmetrical-half-bridge-flyback', {}, TURNS),
    parts: [...MAINS_PARTS, ...partsFor('primary-switch', 'clamp-switch', 'resonant-capacitor', 'rectifier-diode', ...SECONDARY)],
  },
  {
    kind: 'llc-half-bridge',
    name: 'LLC',
    supply: 'AC',
    stages: alone('llc-half-bridge', { ...BUS, ...TANK }, CENTRE_TAP),
    parts: [
      ...MAINS_PARTS,
      ...partsFor('primary-switch', 'resonant-capacitor', 'resonant-inductor', 'clamp-diode', ...SECONDARY).map((one) =>
        one.role === 'resonant-capacitor'
          ? { ...one, rating: rated('resonant-capacitor', 0, '22 nF 1000 V').rating }
          : one.role === 'resonant-inductor'
            ? { ...one, rating: rated('resonant-inductor', 0, '75 µH 100 A').rating }
            : one,
      ),
    ],
  },
  {
    kind: 'forward',
    name: 'two-switch forward',
    supply: 'AC',
    stages: alone('forward', {}, { ...TURNS, mode: 'two-switch' }),
    parts: [...MAINS_PARTS, ...partsFor('primary-switch', 'clamp-diode', 'rectifier-diode', ...SECONDARY)],
  },
  {
    kind: 'secondary-rectifier',
    name: 'rectifier behind a flyback',
    supply: 'AC',
    stages: () => [stage('first', 'flyback', COIL, { turns: [40, 8] }), stage('main', 'secondary-rectifier', {}, { feeds: ['C1'] })],
    parts: [...MAINS_PARTS, ...partsFor(...SECONDARY)],
  },
  {
    kind: 'buck',
    name: 'buck',
    supply: 'DC',
    stages: alone('buck', L),
    parts: BUCK_PARTS,
    corners: BUCK_CORNERS,
    mayFall: { withOutput: ['ripple current', 'peak current'], withSupply: ['ripple current'] },
  },
  {
    kind: 'boost',
    name: 'boost',
    supply: 'DC',
    stages: alone('boost', L),
    parts: BUCK_PARTS,
    corners: BOOST_CORNERS,
    offered: (volts) => [9, volts],
  },
  { kind: 'buck-boost', name: 'four-switch buck-boost', supply: 'DC', stages: alone('buck-boost', L), parts: BUCK_PARTS },
  {
    kind: 'battery-pack',
    name: 'pack',
    supply: 'DC',
    stages: ({ volts }) => [stage('main', 'battery-pack', {}, { cells: { series: Math.max(1, Math.round(volts / 4)), parallel: 1 } })],
    parts: partsFor('load-switch'),
  },
  {
    kind: 'port-control',
    name: 'port',
    supply: 'AC',
    stages: () => [stage('first', 'flyback', COIL, { turns: [40, 8] }), stage('main', 'port-control', {}, { feeds: ['C1'] })],
    parts: [...MAINS_PARTS, ...partsFor('output-capacitor', 'load-switch')],
  },
];

/** An entry of that block alone at a corner. */
export function entryAt({ supply: kind, stages, parts, offered }: Specimen, corner: Corner): Entry {
  const { high, low, volts, amps } = corner;
  const input = supply(kind, `${String(low)}-${String(high)} V`, kind === 'AC' ? '50 Hz' : null);
  const offers = (offered?.(volts) ?? [5, volts]).map((one) => [one, amps] as const);
  return anEntry(input, [portWith('C1', ...offers)], { stages: stages(corner), parts });
}
