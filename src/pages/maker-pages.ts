import { counted } from '../units/counted.ts';
import { pageAddress } from '../corpus/address.ts';
import { makerPages } from '../corpus/maker-lists.ts';
import type { MakerPage } from '../corpus/maker-uses.ts';
import { pagesOf, type ListPage } from '../corpus/pages-of.ts';
import { sheetDigest } from '../corpus/part-digest.ts';
import { makerIndexZones } from '../render/maker-index.ts';
import { makerZones } from '../render/maker-sheet.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The index of makers and the page of each maker, with the further pages of long ones. */
export function plannedMakerPages(corpus: SiteCorpus): readonly PlannedPage[] {
  return [...pagesOf(corpus.makers).map((list) => indexPage(corpus, list)), ...corpus.makers.flatMap(sheetPages)];
}

function indexPage({ makers, manifest }: SiteCorpus, list: ListPage<MakerPage>): PlannedPage {
  const path = list.page === 1 ? '/makers/' : `/makers/${pageAddress(list.page)}/`;
  return {
    path,
    follows: [manifest.digest, list.page],
    draw: () => ({
      frame: 'lists',
      head: {
        title: list.page === 1 ? 'Makers' : `Makers, page ${String(list.page)}`,
        description: `${counted(makers.length, 'maker')} of devices and of parts, with where each was found.`,
        current: 'Makers',
        canonical: path,
      },
      html: makerIndexZones(makers, list),
    }),
  };
}

function sheetPages(maker: MakerPage): readonly PlannedPage[] {
  const digest = makerDigest(maker);
  return makerPages(maker).map(({ page }) => {
    const path = page === 1 ? `/makers/${maker.address}/` : `/makers/${maker.address}/${pageAddress(page)}/`;
    return {
      path,
      follows: [digest, page],
      draw: () => ({
        frame: 'lists',
        head: {
          title: page === 1 ? maker.name : `${maker.name}, page ${String(page)}`,
          description: `${maker.name}: ${counted(maker.devices.length, 'device')} and ${counted(maker.parts.length, 'part number')} found on this bench.`,
          current: 'Makers',
          canonical: path,
        },
        html: makerZones(maker, page),
      }),
    };
  });
}

/** What the page of a maker shows, and nothing more. */
function makerDigest(maker: MakerPage): readonly unknown[] {
  return [
    maker.name,
    maker.devices.map((sheet) => [
      ...sheetDigest(sheet),
      sheet.published,
      sheet.topology,
      sheet.ratedWatts,
      sheet.densityWPerCm3,
      sheet.over,
      sheet.straddles,
      sheet.within,
      sheet.withheld,
    ]),
    maker.parts.map((part) => [part.number, part.roles, part.sheets.slice(0, 5).map(sheetDigest), part.sheets.length]),
    maker.perhapsSame,
    maker.partSheetCount,
    maker.unnumbered.slice(0, 8).map(sheetDigest),
    maker.unnumbered.length,
  ];
}
