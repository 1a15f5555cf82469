import type { Connector } from '../entry/entry.ts';
import type { SheetTraits } from './sheet-traits.ts';

/** One identified part as the corpus reads it: who made it, its number, and where it was found. */
export interface CorpusPart {
  readonly maker: string | null;
  readonly number: string;
  /** Role id, as `roleOf` knows it. */
  readonly role: string;
  /** The author's name of the stage it stands in. */
  readonly stage: string;
  readonly references: readonly string[];
  /** Rating line as found, null where none was. */
  readonly rating: string | null;
}

/**
 * What the corpus reads of one teardown. The rows of the manifest fulfil it; nothing else of an entry is needed, so that
 * a thousand entries can be compared without opening one of them.
 */
export interface CorpusSheet {
  readonly slug: string;
  readonly number: string | null;
  readonly revision: string;
  readonly maker: string;
  readonly name: string;
  readonly kind: string;
  /** ISO date of issue; dates sort as text. */
  readonly published: string;
  /** Edges in millimetres: length, width, height. */
  readonly outline: readonly [number, number, number] | null;
  readonly ports: readonly { readonly id: string; readonly connector: Connector }[];
  readonly ratedWatts: number | null;
  readonly densityWPerCm3: number | null;
  /** Stages in words. */
  readonly topology: string;
  /** Kebab-case id of the topology family. */
  readonly family: string;
  /** Stage kinds in the order power flows. */
  readonly glyphs: readonly string[];
  readonly over: number;
  readonly straddles: number;
  readonly withheld: number;
  readonly within: number;
  readonly partsIdentified: number;
  readonly parts: readonly CorpusPart[];
  /** Everybody named as maker of a part, whether the part has a number or not. */
  readonly partMakers: readonly string[];
  readonly formerAddresses: readonly string[];
  /** Bulk capacitance in microfarads, null where there is none or it is not known. */
  readonly bulkMicrofarads: number | null;
  /** What it is compared with other sheets by. */
  readonly traits: SheetTraits;
  /** Hash over all that is drawn, listed or compared of it: pages that show it follow from this. */
  readonly digest: string;
}
