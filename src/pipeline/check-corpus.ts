import { join } from 'node:path';
import { formerAddressPath } from '../corpus/former-address-path.ts';
import { proseFinding } from '../markdown/prose-finding.ts';
import type { EntryRecord } from './entry-record.ts';
import { notBeside, PICTURES_BESIDE } from './not-beside.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { plainAddress } from './plain-address.ts';
import { pathBeside } from './read-beside.ts';
import { faultOfLink, type SitePages } from './site-pages.ts';

/** What only shows when all entries lie side by side: links between them, former addresses, pictures that are not there. */
export function checkCorpus(
  content: string,
  records: readonly EntryRecord[],
  rulesAndMethods: Pick<SitePages, 'methods' | 'rules'>,
  drafts: 'hidden' | 'shown',
): FileFinding[] {
  const slugs = (wanted: (record: EntryRecord) => boolean): ReadonlySet<string> =>
    new Set(records.filter(wanted).map((record) => record.slug));
  const pages: SitePages = {
    ...rulesAndMethods,
    // An entry that could not be read has its own findings; a link to it needs none on top.
    published: slugs((record) => record.status !== 'draft' || drafts === 'shown'),
    drafts: slugs((record) => record.status === 'draft' && drafts === 'hidden'),
  };
  const judged = records.filter((record) => record.status !== 'draft');
  return [
    ...judged.flatMap((record) => linkFaults(record, pages)),
    ...formerAddressFaults(judged, pages.published),
    ...records.flatMap((record) => missingPictures(content, record)),
  ];
}

function linkFaults(record: EntryRecord, pages: SitePages): FileFinding[] {
  return record.links.flatMap((link) => {
    const fault = faultOfLink(link.path, pages);
    return fault === null ? [] : [{ file: record.file, finding: proseFinding(fault.rule, link, 0, fault.message) }];
  });
}

function missingPictures(content: string, record: EntryRecord): FileFinding[] {
  const entryPath = join(content, ...record.file.split('/'));
  return record.images
    .filter(({ path }) => pathBeside(entryPath, path) === null)
    .map((image) => ({
      file: record.file,
      finding: proseFinding('prose-image-missing', image, 0, notBeside(entryPath, image.path, PICTURES_BESIDE)),
    }));
}

function formerAddressFaults(records: readonly EntryRecord[], published: ReadonlySet<string>): FileFinding[] {
  const uses = records.flatMap((record) =>
    record.formerAddresses.map((written, index) => ({ record, written, index, address: plainAddress(written) })),
  );
  const byAddress = Map.groupBy(uses, ({ address }) => address);
  return uses.flatMap(({ record, written, index, address }) => {
    const where = { in: 'data', path: ['former addresses', index], part: 'value' } as const;
    const report = (message: string): FileFinding => ({
      file: record.file,
      finding: pipelineFinding('former-address-taken', message, where),
    });
    const path = formerAddressPath(written);
    if (!path.ok) return [report(`The former address ${written} ${path.reason}`)];
    const live = /^\/teardowns\/([^/]+)\//.exec(address)?.[1];
    if (live !== undefined && published.has(live) && address !== `/teardowns/${record.slug}/`)
      return [report(`The former address ${written} is the address of a live page, teardowns/${live}`)];
    const others = (byAddress.get(address) ?? []).filter((use) => use.record !== record);
    return others.length === 0
      ? []
      : [report(`The former address ${written} is listed by ${others.map((use) => use.record.file).join(' and ')} too`)];
  });
}
