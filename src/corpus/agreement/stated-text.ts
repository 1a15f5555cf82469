import type { DataPath } from '../../diagnostics/finding.ts';

/** A text in one entry that is compared with texts of others, with its place. */
export interface StatedPlace {
  readonly slug: string;
  readonly file: string;
  /** Path of the value in the entry's data. */
  readonly path: DataPath;
  /** Its cell, where it stands in a spreadsheet beside the entry. */
  readonly cell: { readonly file: string; readonly line: number; readonly column: number } | null;
}

/** One part with a number, as its entry states it. */
export interface StatedPart {
  readonly place: StatedPlace;
  readonly number: string;
  readonly maker: string | null;
  readonly rating: string | null;
  readonly role: string;
  /** References, as an author's answer names them. */
  readonly subject: string;
}

/** A name that stands as maker of a device or of a part. */
export interface StatedMaker {
  readonly place: StatedPlace;
  readonly name: string;
}

/** Something about one entry that only shows beside others. */
export interface AcrossRemark {
  readonly rule: 'part-ratings-differ' | 'part-spelling-variants' | 'maker-spelling-variants';
  readonly at: StatedPlace;
  readonly subject: string;
  /** One sentence without its stop; the places of the others are put behind it. */
  readonly message: string;
  readonly others: readonly StatedPlace[];
}
