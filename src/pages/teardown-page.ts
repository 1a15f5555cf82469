import type { DrawnSheet } from '../corpus/drawn-sheet.ts';
import type { Manifest, SheetSummary } from '../corpus/prepared.ts';
import type { SheetBeside } from '../corpus/sheet-beside.ts';
import type { SizedDevice } from '../corpus/size-field.ts';
import { brokenEntryZones } from '../render/broken-entry.ts';
import { sharingAlt, sharingPath, SHARING_SIZE } from '../render/sharing-fields.ts';
import { teardownZones } from '../render/teardown.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import type { DrawnPage, PlannedPage } from './site-page.ts';

/** What stands around one sheet on its page. */
export interface TeardownPlace {
  readonly summary: SheetSummary;
  readonly beside: SheetBeside;
  readonly site: SiteSettings;
  /** All devices of a known size. */
  readonly devices: readonly SizedDevice[];
}

/** Where the page of a sheet stands, from the root of the site. */
export function teardownPath(slug: string): string {
  return `/teardowns/${slug}/`;
}

const DRAFT = '<p class="draft"><b>Draft</b> Not published: this sheet is left out of the built site.</p>';

/** A teardown: one drawing sheet. */
export function teardownPage(sheet: DrawnSheet, { summary, beside, site, devices }: TeardownPlace): DrawnPage {
  const { slug } = summary;
  const html = teardownZones(slug, sheet, { site, beside, devices });
  return {
    frame: html.includes('<a class="ph-item"') ? 'photo-sheet' : 'sheet',
    head: {
      title: sheet.name,
      description: sheet.description,
      canonical: teardownPath(slug),
      glyphs: sheet.glyphs,
      foot: {
        left: `${sheet.number ?? ''} ${sheet.name}`.trim(),
        middle: `Revision ${sheet.revision} ${sheet.published ?? 'draft'}`,
      },
      hidden: sheet.status !== 'published',
      sharing: { path: `/${sharingPath(slug)}`, ...SHARING_SIZE, alt: sharingAlt(summary) },
    },
    html: (sheet.status === 'draft' ? DRAFT : '') + html,
  };
}

/** While writing, an entry that cannot be shown yet has a page too, which says what is wrong. */
export function brokenEntryPages({ broken }: Manifest): readonly PlannedPage[] {
  return broken.map((entry) => ({
    path: teardownPath(entry.slug),
    follows: [entry],
    draw: () => ({
      frame: 'sheet',
      head: { title: entry.slug, description: `Findings on ${entry.slug}`, canonical: teardownPath(entry.slug), hidden: true },
      html: brokenEntryZones(entry),
    }),
  }));
}
