import { pageAddress } from '../corpus/address.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import { pagesOf } from '../corpus/pages-of.ts';
import { sheetsBeside } from '../corpus/sheet-beside.ts';
import { DRAWN_STAGE_KINDS } from '../figures/stage-glyph.ts';
import { comparedSheet, type ComparedSheet } from '../render/compared-sheet.ts';
import { comparisonZones, pairZone, type PairOfSheets } from '../render/comparison-zones.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The comparison: with its script any two to four sheets; and each sheet with the one most like it, on a page that needs none. */
export function comparisonPages(corpus: SiteCorpus): readonly PlannedPage[] {
  const pairs = pairsOf(corpus);
  return [...pairLists(corpus, pairs), ...pairs.map((pair) => pairPage(corpus, pair))];
}

interface PlannedPair extends PairOfSheets {
  /** The digests of both sheets. */
  readonly follows: string;
}

/** All pairs, at most one a sheet. */
function pairsOf({ manifest, across }: SiteCorpus): readonly PlannedPair[] {
  const bySlug = new Map<string, SheetSummary>(manifest.sheets.map((sheet) => [sheet.slug, sheet]));
  const comparedOf = (slug: string): ComparedSheet | null => {
    const [sheet, facts] = [bySlug.get(slug), across[slug]?.facts];
    return sheet === undefined || facts === undefined ? null : comparedSheet(sheet, facts);
  };
  return sheetsBeside(manifest).pairs.flatMap(({ address, one, other }) => {
    const [first, second] = [comparedOf(one.slug), comparedOf(other.slug)];
    if (first === null || second === null) return [];
    return [{ address, family: one.family, sheets: [first, second] as const, follows: `${one.digest} ${other.digest}` }];
  });
}

function pairLists({ finder }: SiteCorpus, pairs: readonly PairOfSheets[]): readonly PlannedPage[] {
  return pagesOf(pairs).map((list) => {
    const path = list.page === 1 ? '/compare/' : `/compare/${pageAddress(list.page)}/`;
    return {
      path,
      follows: [
        list.rows.map(({ address, family, sheets: [one, other] }) => [address, family, one.fullName, other.fullName]),
        finder.families,
        list.page,
        list.pages,
        list.total,
      ],
      draw: () => ({
        frame: 'comparison',
        head: {
          title: list.page === 1 ? 'Compare' : `Compare, page ${String(list.page)}`,
          description: 'Two to four devices side by side: ports, size, power path and stresses.',
          current: 'Compare',
          canonical: path,
          glyphs: DRAWN_STAGE_KINDS,
        },
        html: comparisonZones(list, finder.families),
      }),
    };
  });
}

function pairPage({ finder }: SiteCorpus, pair: PlannedPair): PlannedPage {
  const [one, other] = pair.sheets;
  const path = `/compare/${pair.address}/`;
  return {
    path,
    follows: [pair.address, pair.follows, finder],
    draw: () => ({
      frame: 'pair',
      head: {
        title: `${one.fullName} and ${other.fullName}`,
        description: `${one.fullName} beside ${other.fullName}: ports, size, power path and stresses.`,
        current: 'Compare',
        canonical: path,
        glyphs: pair.sheets.flatMap((sheet) => sheet.glyphs),
      },
      html: pairZone(pair, finder),
    }),
  };
}
