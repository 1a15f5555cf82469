import type { AcrossFacts } from '../corpus/across-facts.ts';
import { finderRegister, type FinderRegister } from '../corpus/finder-row.ts';
import { formerAddressPages } from '../corpus/former-address-pages.ts';
import { makerUses, type MakerPage } from '../corpus/maker-uses.ts';
import type { MethodUses } from '../corpus/method-uses.ts';
import { partUses, type PartPage } from '../corpus/part-uses.ts';
import type { Manifest } from '../corpus/prepared.ts';
import { topologyFamilies, type TopologyFamily } from '../corpus/topology-families.ts';

/** What the preparing step knows of all sheets, by slug and by formula where it is of one. */
export interface PreparedCorpus {
  readonly manifest: Manifest;
  readonly across: Readonly<Record<string, AcrossFacts>>;
  readonly uses: Readonly<Record<string, MethodUses>>;
}

/** All that the pages across sheets are drawn from. */
export interface SiteCorpus extends PreparedCorpus {
  readonly families: readonly TopologyFamily[];
  readonly parts: readonly PartPage[];
  readonly makers: readonly MakerPage[];
  readonly formerAddresses: ReturnType<typeof formerAddressPages>;
  /** All devices as the finder knows them. */
  readonly finder: FinderRegister;
}

/** Lays all sheets side by side: families, parts, makers, former addresses, the finder's rows. */
export function siteCorpus(prepared: PreparedCorpus): SiteCorpus {
  const { sheets } = prepared.manifest;
  const families = topologyFamilies(sheets);
  const names = Object.fromEntries(families.map((family) => [family.id, family.name]));
  return {
    ...prepared,
    families,
    parts: partUses(sheets),
    makers: makerUses(sheets),
    formerAddresses: formerAddressPages(sheets),
    finder: finderRegister(sheets, (slug) => prepared.across[slug]?.facts ?? null, names),
  };
}
