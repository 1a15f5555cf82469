import { FORMULAS } from '../formulas/index.ts';
import { benchLink } from '../render/bench-page.ts';
import { methodUseZone, usedOn } from '../render/method-use-zone.ts';
import { newestSheets } from '../render/newest-sheets.ts';
import { plannedList, plannedOptions, plannedRest } from '../render/planned-list.ts';
import { zoneListItem } from '../render/zone.ts';
import type { SiteCorpus } from './site-corpus.ts';

/** What is filled into a page that else follows from the program alone. */
export interface PageFilling {
  /** Where the page stands, from the root of the site. */
  readonly path: string;
  /** Everything of the sheets that the page shows: while this is the same, the page is. */
  readonly follows: readonly unknown[];
  /** Markup by the name of its place. Addresses are rooted, without the base path. */
  readonly fill: () => Readonly<Record<string, string>>;
}

/** Fillings of every page of the program that shows something of the sheets. */
export function pageFillings(corpus: SiteCorpus): readonly PageFilling[] {
  const { sheets, bench } = corpus.manifest;
  return [
    { path: '/404.html', follows: [newestSheets(sheets)], fill: () => ({ newest: newestSheets(sheets) }) },
    { path: '/methods/', follows: [benchLink(bench)], fill: () => ({ bench: benchLink(bench) }) },
    {
      path: '/planner/',
      follows: [plannedList(sheets), plannedRest(sheets)],
      fill: () => ({ listed: plannedList(sheets), options: plannedOptions(sheets), rest: plannedRest(sheets) }),
    },
    ...methodFillings(corpus),
  ];
}

function methodFillings({ manifest, uses }: SiteCorpus): readonly PageFilling[] {
  const bySlug = new Map(manifest.sheets.map((sheet) => [sheet.slug, sheet]));
  return FORMULAS.map(({ id }) => {
    const used = uses[id];
    const shown = (used?.newest ?? []).flatMap((use) => {
      const sheet = bySlug.get(use.slug);
      return sheet === undefined ? [] : [{ ...use, sheet }];
    });
    const none = used === undefined || shown.length === 0;
    return {
      path: `/methods/${id}/`,
      follows: [used?.sheets, shown.map(({ sheet: { slug, number, maker, name }, ...use }) => [slug, number, maker, name, use])],
      fill: () => ({
        'used-on': none ? '' : usedOn(used.sheets),
        'zone-item': none ? '' : zoneListItem({ letter: 'D', title: null, label: 'Sheets that use it' }),
        uses: none ? '' : methodUseZone(shown, used.sheets),
      }),
    };
  });
}
