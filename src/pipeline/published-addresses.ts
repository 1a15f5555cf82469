import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EntryRecord } from './entry-record.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { plainAddress } from './plain-address.ts';
import { readText } from './read-text.ts';
import type { EntryFile } from './scan-content.ts';
import { byText } from './text-order.ts';

/** Name of the list in the content folder: every address that was ever published, kept with the entries. */
const PUBLISHED_ADDRESSES = 'published-addresses.txt';

/** It grows with every build and is never shortened: this is some hundred thousand addresses. */
const LARGEST_LIST = 16 * 1024 * 1024;

const HEAD = '# Addresses that were published. Each build adds its own; each must lead somewhere for good.\n';

/** Published addresses that would lead nowhere: no entry has them now, and none names them as a former address. */
export function lostAddresses(content: string, entries: readonly EntryFile[], records: readonly EntryRecord[]): FileFinding[] {
  const path = join(content, PUBLISHED_ADDRESSES);
  if (!existsSync(path)) return [];
  const read = readText(path, LARGEST_LIST);
  if (!read.ok) return [{ file: PUBLISHED_ADDRESSES, finding: read.finding }];
  const drafts = new Set(records.filter(({ status }) => status === 'draft').map(({ slug }) => slug));
  // An entry that could not be read has its own findings and keeps its address.
  const kept = new Set(entries.filter(({ slug }) => !drafts.has(slug)).map(({ slug }) => `/teardowns/${slug}/`));
  for (const { status, formerAddresses } of records)
    if (status !== 'draft') for (const former of formerAddresses) kept.add(plainAddress(former));
  return linesOf(read.text).flatMap(({ address, line }) =>
    kept.has(plainAddress(address)) ? [] : [{ file: PUBLISHED_ADDRESSES, finding: lost(address, line, drafts) }],
  );
}

function lost(address: string, line: number, drafts: ReadonlySet<string>): FileFinding['finding'] {
  const slug = /^\/teardowns\/([^/]+)\/$/.exec(plainAddress(address))?.[1];
  const reason =
    slug !== undefined && drafts.has(slug) ? 'its entry is a draft again' : 'no entry has it, and none lists it as a former address';
  return pipelineFinding('published-address-lost', `The old address ${address} has no redirect: ${reason}`, {
    in: 'file',
    line,
    column: 1,
  });
}

/** Adds the addresses of these sheets to the list; writes nothing when all stand there already. */
export function keepAddresses(content: string, slugs: readonly string[]): void {
  const path = join(content, PUBLISHED_ADDRESSES);
  const read = existsSync(path) ? readText(path, LARGEST_LIST) : null;
  if (read?.ok === false) return;
  const text = read === null ? HEAD : read.text;
  const known = new Set(linesOf(text).map(({ address }) => plainAddress(address)));
  const fresh = slugs.map((slug) => `/teardowns/${slug}/`).filter((address) => !known.has(address));
  if (fresh.length === 0) return;
  const start = text === '' || text.endsWith('\n') ? text : `${text}\n`;
  writeFileSync(path, `${start}${fresh.sort(byText).join('\n')}\n`);
}

function linesOf(text: string): readonly { readonly address: string; readonly line: number }[] {
  return text
    .split(/\r\n|\n|\r/)
    .map((words, index) => ({ address: words.trim(), line: index + 1 }))
    .filter(({ address }) => address !== '' && !address.startsWith('#'));
}
