import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Bench } from '../entry/bench.ts';
import type { Entry } from '../entry/entry.ts';
import type { Derived } from '../derived/derived.ts';
import type { CorpusSheet } from './corpus-sheet.ts';
import type { PartFacts } from './part-facts/part-facts.ts';
import type { PublishedPhoto } from './published-photo.ts';
import type { Table } from '../tables/table.ts';

/** One teardown ready to be drawn (`render/draw-sheet.ts`); its page reads the drawing. */
export interface PreparedSheet {
  readonly entry: Entry;
  readonly derived: Derived;
  /** Those that the page has no figure for, and those that the author placed; any other is built from entry and derived values. */
  readonly tables: readonly Table[];
  /** Ids of the tables that the author placed in the prose; the page leaves them out of its own order. */
  readonly placed: readonly string[];
  /** Sanitised HTML of the prose: links rooted, without the base path; tables as `<div data-table="…">`. `placeProse(html)` cuts it for the page. */
  readonly html: string;
  readonly headings: readonly { readonly depth: number; readonly id: string; readonly text: string }[];
  readonly diagnostics: readonly Diagnostic[];
  /** In the order of `entry.photos`; null for one that is not there or was refused, which a finding says. */
  readonly photos: readonly (PublishedPhoto | null)[];
}

/** One row of the manifest: what the corpus and lists need of a teardown, and nothing more. */
export interface SheetSummary extends CorpusSheet {
  readonly title: string;
  readonly summary: string | null;
  readonly kind: Entry['device']['kind'];
  /** Drafts are in the manifest in `dev` only; the date of one that has none yet is empty. */
  readonly status: Entry['status'];
  /** Whether enough is known of its port shares to plan with. */
  readonly hasPlanner: boolean;
  /** The body is a cylinder, and its edges are those of the box around it. */
  readonly round?: true;
  readonly corrections: readonly Entry['corrections'][number][];
  readonly recall: Entry['recall'];
  /** Instruments of the bench that its values were read on: id, and how many values. */
  readonly instruments?: readonly (readonly [string, number])[];
}

/** Settings of the site, from `site.yaml`. */
export interface SiteSettings {
  readonly name: string;
  readonly author: string;
  readonly description: string;
  /** Absolute address of the published site, for feeds and canonical links; null while unknown. */
  readonly address: string | null;
  readonly numberPrefix: string;
  readonly licence: string | null;
  readonly language: string;
  /** Id of the derating policy for entries that name none; null for the default. */
  readonly derating: string | null;
}

/** What the site reads: `manifest.json` in the prepared folder. Published entries only; in `dev` broken ones are listed too. */
export interface Manifest {
  readonly site: SiteSettings;
  readonly sheets: readonly SheetSummary[];
  /** Entries that have errors; only filled in `dev`. */
  readonly broken: readonly { readonly slug: string; readonly file: string; readonly diagnostics: readonly Diagnostic[] }[];
  /** Findings that only show beside other sheets, by the address of the sheet that each belongs to. */
  readonly findingsAcross: Readonly<Record<string, readonly Diagnostic[]>>;
  /** Fact sheets of parts that the sheets name. */
  readonly partFacts: readonly PartFacts[];
  /** Instruments and methods of the bench; absent where the site says nothing of them. */
  readonly bench?: Bench;
  /** Hash over all summaries. */
  readonly digest: string;
}
