import type { Known } from '../../values/value.ts';

/** Side of the insulation barrier; `none` in a device that has no barrier. */
export type BarrierSide = 'primary' | 'barrier' | 'secondary' | 'none';

/** Where the power comes from, in words for the head of the path. */
export interface PathSource {
  readonly kind: 'mains' | 'direct' | 'battery';
  /** "mains", "vehicle socket or supply", "pack". */
  readonly name: string;
  /** Line at which the powers were measured, as written: "230 V 50 Hz"; null where nothing says it. */
  readonly line: string | null;
}

/** Parts of one key on the way of the power. */
export interface PathPart {
  readonly references: readonly string[];
  readonly role: string;
}

/** What conduction alone takes in the named parts of a stage, worked out: a part of its loss, never the whole of it. */
export interface PathConduction {
  readonly loss: Known<'power'>;
  /** Parts that it holds. */
  readonly references: readonly string[];
  /** Parts that carry current too, but whose loss cannot be worked out. */
  readonly unknown: readonly { readonly references: readonly string[]; readonly reason: string }[];
}

/** One stage on the way of the power. */
export interface PathBlock {
  readonly stage: string;
  readonly kind: string;
  readonly side: BarrierSide;
  /** Stage that feeds it; null for the first one and for stages directly on the source. */
  readonly from: string | null;
  /** Power into it and out of it, where known. */
  readonly input: Known<'power'>;
  readonly output: Known<'power'>;
  readonly loss: Known<'power'>;
  /** Null where no part of it is named whose conduction could be worked out. */
  readonly conduction: PathConduction | null;
  /** Voltage of the bus behind it, as written: "390 V"; null where the entry gives none. */
  readonly bus: string | null;
  /** Its parts, key by key. */
  readonly parts: readonly PathPart[];
}

/** Where the power leaves: a port, or several that share one pool. */
export interface PathOutlet {
  readonly ports: readonly string[];
  /** Last stage before it; null where no stage is described. */
  readonly from: string | null;
  readonly power: Known<'power'>;
  /** Voltage and current at which it was measured, or the highest voltage it offers: "15.00 V 2 A", "up to 20 V". */
  readonly note: string | null;
}

/** How the power at the input is known. */
export type InputBasis = 'measured' | 'one port at a time' | 'by efficiency' | 'unknown';

/** The way of the power from the supply to the ports, with one set of ports in use. Plain data, JSON-safe. */
export interface PowerPath {
  readonly source: PathSource;
  /** Blocks in the order of the entry; `from` makes them a tree. */
  readonly blocks: readonly PathBlock[];
  readonly outlets: readonly PathOutlet[];
  readonly input: Known<'power'>;
  readonly output: Known<'power'>;
  readonly loss: Known<'power'>;
  readonly basis: InputBasis;
  /** Which ports are in use: "All ports in use."; null for a single port. */
  readonly set: string | null;
  /** How the powers are known and what is left out, a sentence each. */
  readonly notes: readonly string[];
}
