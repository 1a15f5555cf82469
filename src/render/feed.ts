import { escapeText } from '../figures/markup.ts';
import type { Recall } from '../entry/entry.ts';
import type { SheetSummary, SiteSettings } from '../corpus/prepared.ts';

/** Sheets that the feed holds, newest first. */
export const FEED_LENGTH = 30;

/**
 * The newest sheets as an Atom feed (RFC 4287). Every address in it is absolute, and the ids of its entries are tag URIs
 * (RFC 4151) that neither a new title nor a new folder name changes, so that a reader's program shows no sheet twice.
 *
 * @param absolute whole address of a page of the site
 */
export function atomFeed(site: SiteSettings, host: string, sheets: readonly SheetSummary[], absolute: (path: string) => string): string {
  const newest = [...sheets.map(changedOn)].sort().at(-1) ?? '1970-01-01';
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeText(site.language)}">`,
    `<id>${escapeText(absolute('/'))}</id>`,
    `<title>${escapeText(site.name)}</title>`,
    `<subtitle>${escapeText(site.description)}</subtitle>`,
    `<link rel="alternate" type="text/html" href="${escapeText(absolute('/'))}"/>`,
    `<link rel="self" type="application/atom+xml" href="${escapeText(absolute('/feed.xml'))}"/>`,
    `<updated>${instant(newest)}</updated>`,
    `<author><name>${escapeText(site.author)}</name></author>`,
    ...(site.licence === null ? [] : [`<rights>${escapeText(site.licence)}</rights>`]),
    ...sheets.map((sheet) => entryOf(sheet, host, absolute)),
    '</feed>',
    '',
  ].join('\n');
}

function entryOf(summary: SheetSummary, host: string, absolute: (path: string) => string): string {
  const { slug, maker, name, title, published, recall } = summary;
  const address = escapeText(absolute(`/teardowns/${slug}/`));
  const device = [maker, name].filter((word) => word !== '').join(' ');
  const words = [recallSentence(recall), summary.summary ?? ''].filter((part) => part !== '').join(' ');
  return [
    '<entry>',
    `<id>${escapeText(`tag:${host},${published}:teardowns/${firstName(summary)}`)}</id>`,
    `<title>${escapeText(`${recall === null ? '' : 'Recalled: '}${device}${title === '' ? '' : `: ${title}`}`)}</title>`,
    `<link rel="alternate" type="text/html" href="${address}"/>`,
    `<published>${instant(published)}</published>`,
    `<updated>${instant(changedOn(summary))}</updated>`,
    ...(words === '' ? [] : [`<summary type="text">${escapeText(words)}</summary>`]),
    '</entry>',
  ].join('\n');
}

function recallSentence(recall: Recall | null): string {
  if (recall === null) return '';
  return `Recalled by ${recall.authority} on ${recall.date}: ${recall.hazard}. Notice: ${recall.url}`;
}

/** The name under which a sheet was first published: a later renaming adds to the former addresses. */
function firstName({ slug, formerAddresses }: SheetSummary): string {
  const former = formerAddresses.map((address) => /\/?teardowns\/([^/]+)\/?$/.exec(address)?.[1]).find((name) => name !== undefined);
  return former ?? slug;
}

function changedOn({ published, corrections }: SheetSummary): string {
  return [published, ...corrections.map(({ date }) => date)].sort().at(-1) ?? published;
}

/** Entries carry dates without a clock; the feed's format asks for one. */
function instant(date: string): string {
  return `${date}T00:00:00Z`;
}
