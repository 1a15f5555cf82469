import { fieldOf, placeField } from './bit-field.ts';
import type { BitField } from './bit-field.ts';
import { LAYOUTS } from './object-layouts.ts';
import type { ObjectKind } from './object-layouts.ts';

type Flag = number;

/**
 * One 32-bit word of a source's capabilities, field by field: millivolts, milliamperes, milliwatts, watts; flags are 0 or 1.
 * Source: USB Power Delivery Specification R3.2 V1.1 (2024-10), 6.4.1.2, 6.4.1.3.
 */
export type PowerDataObject =
  | {
      readonly kind: 'fixed';
      readonly voltage_mV: number;
      readonly current_mA: number;
      /** Peak current code 0 to 3 (Table 6.10). */
      readonly peak: number;
      readonly reserved22: Flag;
      readonly eprCapable: Flag;
      readonly unchunked: Flag;
      readonly dualRoleData: Flag;
      readonly usbComm: Flag;
      readonly unconstrained: Flag;
      readonly usbSuspend: Flag;
      readonly dualRolePower: Flag;
    }
  | { readonly kind: 'battery'; readonly max_mV: number; readonly min_mV: number; readonly power_mW: number }
  | { readonly kind: 'variable'; readonly max_mV: number; readonly min_mV: number; readonly current_mA: number }
  | {
      readonly kind: 'pps';
      readonly powerLimited: Flag;
      readonly reserved26_25: number;
      readonly max_mV: number;
      readonly reserved16: Flag;
      readonly min_mV: number;
      readonly reserved7: Flag;
      readonly current_mA: number;
    }
  | {
      readonly kind: 'eprAvs';
      readonly peak: number;
      readonly max_mV: number;
      readonly reserved16: Flag;
      readonly min_mV: number;
      readonly pdp_W: number;
    }
  | {
      readonly kind: 'sprAvs';
      readonly peak: number;
      readonly reserved25_20: number;
      /** Largest current from 9 to 15 V. */
      readonly current15V_mA: number;
      /** Largest current from 15 to 20 V; 0 where the range ends at 15 V. */
      readonly current20V_mA: number;
    }
  /** The augmented subtype that has no meaning yet; its bits are kept. */
  | { readonly kind: 'reserved'; readonly bits: number }
  /** A zero word: filler of an extended message. */
  | { readonly kind: 'empty' };

const TYPES = ['fixed', 'battery', 'variable'] as const;
const AUGMENTED = ['pps', 'eprAvs', 'sprAvs', 'reserved'] as const;

function kindOf(word: number): ObjectKind {
  const type = TYPES[word >>> 30];
  return type ?? AUGMENTED[(word >>> 28) & 3] ?? 'reserved';
}

/** Takes a 32-bit word apart; higher bits of the number are cut off. Every word decodes: unknown kinds come back as `reserved`. */
export function decodeObject(word: number): PowerDataObject {
  const bits = word >>> 0;
  if (bits === 0) return { kind: 'empty' };
  const read = (field: BitField): number => fieldOf(bits, field);
  switch (kindOf(bits)) {
    case 'fixed':
      return { kind: 'fixed', ...mapped(LAYOUTS.fixed, read) };
    case 'battery':
      return { kind: 'battery', ...mapped(LAYOUTS.battery, read) };
    case 'variable':
      return { kind: 'variable', ...mapped(LAYOUTS.variable, read) };
    case 'pps':
      return { kind: 'pps', ...mapped(LAYOUTS.pps, read) };
    case 'eprAvs':
      return { kind: 'eprAvs', ...mapped(LAYOUTS.eprAvs, read) };
    case 'sprAvs':
      return { kind: 'sprAvs', ...mapped(LAYOUTS.sprAvs, read) };
    case 'reserved':
      return { kind: 'reserved', ...mapped(LAYOUTS.reserved, read) };
  }
}

function mapped<K extends string>(layout: Readonly<Record<K, BitField>>, read: (field: BitField) => number): Record<K, number> {
  const values = Object.entries<BitField>(layout).map(([name, field]) => [name, read(field)] as const);
  // The keys are those of the layout, one value each.
  return Object.fromEntries(values) as Record<K, number>;
}

/** Bits 31:28 that say the kind; two bits for the plain ones. */
const KIND_BITS: Readonly<Record<ObjectKind, number>> = {
  fixed: 0x0,
  battery: 0x40000000,
  variable: 0x80000000,
  pps: 0xc0000000,
  eprAvs: 0xd0000000,
  sprAvs: 0xe0000000,
  reserved: 0xf0000000,
};

/** The unsigned 32-bit word of an object, or null where a field does not fit its bits or its step (3.33 A in a PPS object). */
export function encodeObject(object: PowerDataObject): number | null {
  if (object.kind === 'empty') return 0;
  const { kind, ...values } = object;
  const given: Readonly<Record<string, number>> = values;
  let word = KIND_BITS[kind];
  for (const [name, field] of Object.entries<BitField>(LAYOUTS[kind])) {
    const placed = placeField(given[name] ?? Number.NaN, field);
    if (placed === null) return null;
    word = (word | placed) >>> 0;
  }
  return word;
}
