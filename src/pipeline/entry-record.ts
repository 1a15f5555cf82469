import type { StatedMaker, StatedPart } from '../corpus/agreement/stated-text.ts';
import type { FormulaUse } from '../corpus/formula-uses.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Answer, Entry } from '../entry/entry.ts';
import type { PublishedPhoto } from '../corpus/published-photo.ts';
import type { SheetSummary } from '../corpus/prepared.ts';

/** What is kept of one entry besides its sheet: enough to compare entries with each other without parsing any of them again. */
export interface EntryRecord {
  readonly slug: string;
  readonly file: string;
  /** `unreadable`: the frontmatter gave no entry. */
  readonly status: Entry['status'] | 'unreadable';
  /** As the entry writes them. */
  readonly formerAddresses: readonly string[];
  /** Findings in the file itself. */
  readonly diagnostics: readonly Diagnostic[];
  /** Whether what only the pages need was made: `check` leaves it out, and the next build makes it. */
  readonly forPages: boolean;
  readonly summary: SheetSummary | null;
  /** What each formula computed in it, for the pages of the methods. */
  readonly uses: readonly FormulaUse[];
  /** What the finder, the comparison and the search need of it, as JSON, since it is only passed on; null where there is no sheet. */
  readonly across: string | null;
  /** What is compared with other entries part by part, as the entry states it. */
  readonly stated: {
    readonly parts: readonly StatedPart[];
    readonly makers: readonly StatedMaker[];
    readonly answers: readonly Answer[];
  };
  /** The fact sheets of parts that it was made with. */
  readonly factsKey: string;
  /** Links of the text to pages of the site; offsets in the file. */
  readonly links: readonly RecordedLink[];
  /** Pictures that the text places, by path from the entry's folder; offsets in the file. */
  readonly images: readonly { readonly path: string; readonly start: number; readonly end: number }[];
  /** Files beside the entry that its result depends on, with the hash of their bytes (null: not there). */
  readonly dependsOn: readonly { readonly name: string; readonly hash: string | null }[];
  /** Pictures that its page shows, with the hashes of their originals. */
  readonly photos: readonly { readonly published: PublishedPhoto; readonly hash: string }[];
  /** Size of the drawn sheet in bytes; null where there is no sheet. */
  readonly sheetBytes: number | null;
}

interface RecordedLink {
  readonly path: string;
  readonly fragment: string;
  readonly written: string;
  readonly start: number;
  readonly end: number;
}
