import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Entry } from '../entry/entry.ts';

/** A zone before it has its letter. The texts are markup; addresses in them are rooted. */
export interface DrawnZone {
  readonly title: string;
  readonly layout: 'side' | 'full';
  /** Reading text in columns 1–2, or the sentence above. */
  readonly side: string;
  readonly matter: string;
}

/** A teardown drawn as far as its own entry goes. The site frames it and adds what stands beside other sheets. Plain data. */
export interface DrawnSheet {
  /** Maker and name of the device. */
  readonly name: string;
  readonly description: string;
  readonly number: string | null;
  readonly revision: string;
  readonly published: string | null;
  /** Null where the entry leaves it to the site. */
  readonly author: string | null;
  readonly status: Entry['status'];
  readonly topology: string;
  /** Stage kinds whose glyphs are drawn, each once. */
  readonly glyphs: readonly string[];
  /** Markup of the notice above everything else; empty without a recall. */
  readonly recall: string;
  /** Title block with places for the rank and the author (`completedTitle` fills them), and outline. */
  readonly title: string;
  /** Zones before those that need other sheets. */
  readonly zones: readonly DrawnZone[];
  /** Zones after the findings: corrections, working, sources. */
  readonly record: readonly DrawnZone[];
  readonly diagnostics: readonly Diagnostic[];
}
