import type { Body, Device, Nameplate, Sample } from './entry-device.ts';
import type { EfficiencyPoint, LogFile, MeasuredPoint, Photo } from './entry-measurements.ts';
import type { InsulationPlace, Part, Stage } from './entry-parts.ts';
import type { Port, Sharing } from './entry-ports.ts';
import type { Answer, CitedSource, Claim, Correction, Discharged, Recall } from './entry-record.ts';

export type * from './entry-facts.ts';
export type * from './entry-device.ts';
export type * from './entry-ports.ts';
export type * from './entry-parts.ts';
export type * from './entry-measurements.ts';
export type * from './entry-record.ts';

/** One teardown, read and parsed: everything the author said, nothing computed. Plain data, JSON-safe. */
export interface Entry {
  /** Folder name, which is its address: /teardowns/<slug>/. */
  readonly slug: string;
  /** Path from the content folder, with forward slashes: "teardowns/lm-q100/index.md". */
  readonly file: string;
  readonly number: string | null;
  readonly title: string;
  /** One or two sentences for lists and "In short". */
  readonly summary: string | null;
  readonly status: 'draft' | 'published';
  /** ISO date. */
  readonly published: string | null;
  readonly author: string | null;
  readonly device: Device;
  readonly sample: Sample;
  readonly nameplate: Nameplate;
  readonly body: Body;
  readonly ports: readonly Port[];
  readonly sharing: Sharing | null;
  readonly stages: readonly Stage[];
  readonly parts: readonly Part[];
  readonly insulation: readonly InsulationPlace[];
  readonly efficiency: readonly EfficiencyPoint[];
  readonly measurements: readonly MeasuredPoint[];
  /** Instruments by their short name. */
  readonly instruments: Readonly<Record<string, string>>;
  readonly claims: readonly Claim[];
  readonly logs: readonly LogFile[];
  readonly photos: readonly Photo[];
  readonly answers: readonly Answer[];
  readonly corrections: readonly Correction[];
  readonly formerAddresses: readonly string[];
  readonly recall: Recall | null;
  readonly sources: readonly CitedSource[];
  /** Derating policy that the author chose; null for that of the site. */
  readonly derating: string | null;
  readonly discharged: Discharged | null;
  /** null: not said; `by` is set only where it was powered with its case open. */
  readonly poweredOpen: { readonly done: boolean; readonly by: string | null } | null;
  readonly cellsOpened: { readonly done: boolean; readonly chargeState: string | null } | null;
}
