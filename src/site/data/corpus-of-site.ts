import { formerAddressPages } from '../../corpus/former-address-pages.ts';
import { makerUses, type MakerPage } from '../../corpus/maker-uses.ts';
import { partUses, type PartPage } from '../../corpus/part-uses.ts';
import { topologyFamilies, type TopologyFamily } from '../../corpus/topology-families.ts';
import type { Manifest } from '../../corpus/prepared.ts';

/** What the corpus says about all sheets of one manifest. */
export interface SiteCorpus {
  readonly families: readonly TopologyFamily[];
  readonly parts: readonly PartPage[];
  readonly makers: readonly MakerPage[];
  readonly formerAddresses: ReturnType<typeof formerAddressPages>;
}

const HELD = new WeakMap<Manifest, SiteCorpus>();

/** The corpus of a manifest; compared once, then shared by all routes that list something. */
export function corpusOf(manifest: Manifest): SiteCorpus {
  const held = HELD.get(manifest);
  if (held !== undefined) return held;
  const corpus = {
    families: topologyFamilies(manifest.sheets),
    parts: partUses(manifest.sheets),
    makers: makerUses(manifest.sheets),
    formerAddresses: formerAddressPages(manifest.sheets),
  };
  HELD.set(manifest, corpus);
  return corpus;
}
