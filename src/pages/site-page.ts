/** What the frame of a page loads besides the look of every sheet: styles and scripts. */
export const FRAME_KINDS = ['register', 'lists', 'sheet', 'photo-sheet', 'finder', 'comparison', 'pair'] as const;

/** Frames that pages are put into; each is made once by the site generator. */
export type FrameKind = (typeof FRAME_KINDS)[number];

/** Words of the navigation, and pages that stand under one of them. */
export type NavigationWord =
  'Register' | 'Finder' | 'Compare' | 'Topologies' | 'Parts' | 'Makers' | 'Methods' | 'Rules' | 'Bench' | 'Search';

/** What a page says of itself outside its zones. Addresses are rooted, without the base path. */
export interface PageHead {
  /** Title of the page, without the site's name. */
  readonly title: string;
  readonly description: string;
  /** Word of the navigation under which the page stands. */
  readonly current?: NavigationWord | undefined;
  /** Address that counts for the page: "/teardowns/x/". */
  readonly canonical?: string | undefined;
  /** Stage kinds whose glyphs the page draws. */
  readonly glyphs?: Iterable<string> | undefined;
  /** Lines of the running foot in print: left, middle. */
  readonly foot?: { readonly left: string; readonly middle: string } | undefined;
  /** Not for the index of search engines: drafts, broken entries. */
  readonly hidden?: boolean | undefined;
  /** Picture of the page where its address is shared: path without the base, size in pixels, and what it shows. */
  readonly sharing?: { readonly path: string; readonly width: number; readonly height: number; readonly alt: string } | undefined;
  /** Where a reader is sent on to, from a page that has moved. */
  readonly movedTo?: string | undefined;
}

/** A page that follows from the sheets, drawn: its zones as HTML, and what its frame needs. */
export interface DrawnPage {
  readonly frame: FrameKind;
  readonly head: PageHead;
  /** Zones of the page; addresses are rooted, without the base path. */
  readonly html: string;
}

/** A page that follows from the sheets, before it is drawn. */
export interface PlannedPage {
  /** Where it stands, from the root of the site: "/parts/x/", or "/404.html" for a page that is a file. */
  readonly path: string;
  /** Everything that the page shows besides the settings of the site: while this is the same, the page is. */
  readonly follows: readonly unknown[];
  readonly draw: () => DrawnPage;
}
