import type { DataPath } from '../diagnostics/finding.ts';
import type { Quantity } from '../units/quantity.ts';
import type { SizeBasis } from './entry-device.ts';
import type { Fact } from './entry-facts.ts';

export interface Answer {
  readonly to: string;
  readonly at: string | null;
  readonly because: string;
  readonly path: DataPath;
}

export interface Correction {
  readonly date: string;
  readonly where: string;
  readonly was: string | null;
  readonly is: string | null;
  readonly why: string;
}

export interface Recall {
  readonly authority: string;
  readonly date: string;
  readonly url: string;
  readonly hazard: string;
}

/** A result that the maker or a document states; `quantity` is null where it is words only. */
export interface Claim {
  readonly of: string;
  readonly written: string;
  readonly quantity: Quantity | null;
  readonly basis: SizeBasis | null;
  readonly line: string | null;
  readonly output: string | null;
  readonly load: string | null;
  readonly port: string | null;
  readonly where: string | null;
  readonly note: string | null;
  readonly path: DataPath;
}

/** How the stored charge was taken out before hands went in. */
export interface Discharged {
  readonly method: string;
  readonly voltage: Fact<'voltage'> | null;
}

export interface CitedSource {
  readonly title: string;
  readonly url: string | null;
  readonly note: string | null;
}
