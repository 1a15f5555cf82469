import { counted } from '../units/counted.ts';
import { pageAddress } from '../corpus/address.ts';
import { factsOfPart } from '../corpus/facts-of-part.ts';
import { pagesOf, type ListPage } from '../corpus/pages-of.ts';
import { partDigest } from '../corpus/part-digest.ts';
import { indexOrder } from '../corpus/part-index.ts';
import type { PartPage } from '../corpus/part-uses.ts';
import { partIndexZones } from '../render/part-index.ts';
import { partZones } from '../render/part-where-used.ts';
import { roleWords } from '../render/role-words.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The index of part numbers and the page of each number, with the further pages of long ones. */
export function plannedPartPages(corpus: SiteCorpus): readonly PlannedPage[] {
  const index = pagesOf(indexOrder(corpus.parts)).map((list) => indexPage(corpus, list));
  return [...index, ...corpus.parts.flatMap((part) => pagesOfPart(corpus, part))];
}

function indexPage({ parts, manifest }: SiteCorpus, list: ListPage<PartPage>): PlannedPage {
  const path = list.page === 1 ? '/parts/' : `/parts/${pageAddress(list.page)}/`;
  const sheetCount = manifest.sheets.length;
  return {
    path,
    follows: [manifest.digest, list.page],
    draw: () => ({
      frame: 'lists',
      head: {
        title: list.page === 1 ? 'Parts' : `Parts, page ${String(list.page)}`,
        description: `${counted(parts.length, 'part number')} found in ${counted(sheetCount, 'teardown')}, with every place where each was used.`,
        current: 'Parts',
        canonical: path,
      },
      html: partIndexZones(parts, list, sheetCount),
    }),
  };
}

function pagesOfPart({ manifest }: SiteCorpus, part: PartPage): readonly PlannedPage[] {
  const facts = factsOfPart(manifest.partFacts, part.number);
  const digest = [partDigest(part), facts];
  const found = `${part.roles.map(roleWords).join(', ')}: found on ${counted(part.sheetCount, 'sheet')}`;
  return pagesOf(part.uses).map((list) => {
    const path = list.page === 1 ? `/parts/${part.address}/` : `/parts/${part.address}/${pageAddress(list.page)}/`;
    return {
      path,
      follows: [...digest, list.page],
      draw: () => ({
        frame: 'lists',
        head: {
          title: list.page === 1 ? part.number : `${part.number}, page ${String(list.page)}`,
          description: `${part.number}, ${found}, with its place and its rating on each.`,
          current: 'Parts',
          canonical: path,
        },
        html: partZones(part, facts, list),
      }),
    };
  });
}
