import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';
import { formerAddressPath } from './former-address-path.ts';

/** A page that stands at a former address and leads to the present one. */
export interface FormerAddressPage {
  /** Path from the root of the site, without slashes at its ends: "teardowns/old-name", or a file: "2019/quadra.html". */
  readonly path: string;
  readonly slug: string;
  readonly device: string;
}

/**
 * Redirect pages for all former addresses. One that a present sheet uses, that two sheets claim, or that no page can stand at gets none,
 * since a link must never lead to the wrong device; `former-address-taken` says so.
 */
export function formerAddressPages(sheets: readonly CorpusSheet[]): readonly FormerAddressPage[] {
  const present = new Set(sheets.map((sheet) => `teardowns/${sheet.slug}`));
  const claims = new Map<string, Map<string, CorpusSheet>>();
  for (const sheet of sheets) {
    for (const written of sheet.formerAddresses) {
      const found = formerAddressPath(written);
      if (!found.ok || present.has(found.path.split('/').slice(0, 2).join('/'))) continue;
      claims.set(found.path, (claims.get(found.path) ?? new Map<string, CorpusSheet>()).set(sheet.slug, sheet));
    }
  }
  const pages = [...claims].flatMap(([path, claimants]): readonly FormerAddressPage[] => {
    const [sheet, ...others] = claimants.values();
    return sheet === undefined || others.length > 0 ? [] : [{ path, slug: sheet.slug, device: `${sheet.maker} ${sheet.name}` }];
  });
  return pages.sort((one, other) => compareText(one.path, other.path));
}
