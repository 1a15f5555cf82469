import { counted } from '../units/counted.ts';
import { pageAddress } from '../corpus/address.ts';
import { pagesOf } from '../corpus/pages-of.ts';
import type { TopologyFamily } from '../corpus/topology-families.ts';
import { familyZones, type FamilyPlace } from '../render/topology-family.ts';
import { topologyIndexZones } from '../render/topology-index.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The list of topology families and the page of each family, with the further pages of large ones. */
export function plannedTopologyPages(corpus: SiteCorpus): readonly PlannedPage[] {
  const { families } = corpus;
  return [indexPage(corpus), ...families.flatMap((family, index) => familyPages(family, { place: index + 1, families: families.length }))];
}

function indexPage({ families, manifest }: SiteCorpus): PlannedPage {
  const howMany = counted(families.length, 'topology family', 'topology families');
  return {
    path: '/topologies/',
    follows: [manifest.digest],
    draw: () => ({
      frame: 'lists',
      head: {
        title: 'Topologies',
        description: `${howMany} in ${counted(manifest.sheets.length, 'teardown')}, by the chain of their power stages.`,
        current: 'Topologies',
        canonical: '/topologies/',
        glyphs: new Set(families.flatMap(kindsOf)),
      },
      html: topologyIndexZones(families),
    }),
  };
}

function familyPages(family: TopologyFamily, place: FamilyPlace): readonly PlannedPage[] {
  const digest = [family.id, ...family.members.map(({ sheet }) => sheet.digest)].join(' ');
  return pagesOf(family.members).map((list) => {
    const path = list.page === 1 ? `/topologies/${family.id}/` : `/topologies/${family.id}/${pageAddress(list.page)}/`;
    return {
      path,
      follows: [digest, place, list.page],
      draw: () => ({
        frame: 'lists',
        head: {
          title: list.page === 1 ? family.name : `${family.name}, page ${String(list.page)}`,
          description: `${family.name}: ${counted(family.members.length, 'teardown')} with this power path, side by side.`,
          current: 'Topologies',
          canonical: path,
          glyphs: new Set(kindsOf(family)),
        },
        html: familyZones(family, place, list),
      }),
    };
  });
}

function kindsOf(family: TopologyFamily): readonly string[] {
  return family.chain.map((block) => block.kind);
}
