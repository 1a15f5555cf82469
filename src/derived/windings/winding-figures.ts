import type { Entry } from '../../entry/entry.ts';
import type { RatioAsk, ResetBalance } from '../../stages/models/stage-model.ts';
import type { Known } from '../../values/value.ts';

/** Where a turns ratio was found, the one that is used first: counted turns before a ratio, a ratio before a reflected voltage. */
export type RatioOrigin = 'turns' | 'transformer' | 'ratio' | 'winding voltages' | 'reflected voltage';

/** One of the ways in which an entry gives the turns ratio of a stage. */
export interface StatedRatio {
  readonly from: RatioOrigin;
  /** Primary over secondary. */
  readonly value: Known<'ratio'>;
  /** As written: "34:6", "12.0 V : 2.12 V". */
  readonly written: string;
  readonly path: Entry['stages'][number]['path'];
  /** Windings, primary first, where they were counted; empty otherwise. */
  readonly windings: readonly number[];
  /** How far it may lie below and above the turns without contradicting them, as fractions. */
  readonly room: { readonly below: number; readonly above: number };
}

/** What a ratio would make of the block if it stood the other way round. */
export interface AskedOfRatio extends RatioAsk {
  readonly inverse: Known<'ratio'>;
}

/** Everything said of the windings of one stage, and what follows from it. */
export interface WindingFigures {
  readonly stage: string;
  /** Every way in which the ratio is given; the first is the one that everything is computed with. */
  readonly stated: readonly StatedRatio[];
  /** What the ratio asks of the block at its voltages; null where the model of the block does not say. */
  readonly asked: AskedOfRatio | null;
  /** Whether the core of a forward is reset at the duty that it needs; null where nothing is said of its reset. */
  readonly reset: ResetBalance | null;
}
