import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';
import { buildSmallSite } from './built-site.ts';
import { showSite } from './shown-site.ts';

const LONG = 'fennimoor-deskway-100';
const SHORT = 'short';
const FOLDER = join(PROJECT_ROOT, 'demo/teardowns', LONG);
const PICTURES = ['exterior.jpg', 'board-top.jpg', 'board-bottom.jpg'];
const MOST_BYTES = 400_000;

const shown = await showSite(() => buildSmallSite('/base/', [LONG], { files: { ...ninePhotosMore(), ...shortEntry() } }));

/** The pictures of the entry over and over, each time under another name, so that a browser takes each for one of its own. */
function repeated(slug: string, rounds: readonly number[]): { readonly list: string; readonly files: Record<string, Uint8Array> } {
  const copies = rounds.flatMap((round) => PICTURES.map((name) => ({ name, as: `round-${String(round)}-${name}` })));
  return {
    list: copies.map(({ as }) => `  - { file: ${as}, alt: The same once more }\n`).join(''),
    files: Object.fromEntries(copies.map(({ name, as }) => [`teardowns/${slug}/${as}`, readFileSync(join(FOLDER, name))])),
  };
}

/** A whole teardown of the demo with twelve photos in place of three. */
function ninePhotosMore(): Record<string, string | Uint8Array> {
  const { list, files } = repeated(LONG, [2, 3, 4]);
  const entry = readFileSync(join(FOLDER, 'index.md'), 'utf8').replace(/(?<=\nphotos:\n(?: .*\n)+)(?=\n)/, list);
  return { ...files, [`teardowns/${LONG}/index.md`]: entry };
}

/** A teardown with little else than twelve photos: they begin as near to the head of the page as they can. */
function shortEntry(): Record<string, string | Uint8Array> {
  const { list, files } = repeated(SHORT, [1, 2, 3, 4]);
  const entry = `---\ntitle: A charger\nstatus: published\npublished: 2026-03-01\nsummary: Little but photos.\ndevice: { maker: Ostrel, model: OV-60, kind: wall charger }\nphotos:\n${list}---\n\nWords.\n`;
  return { ...files, [`teardowns/${SHORT}/index.md`]: entry };
}

interface Fetched {
  readonly file: string;
  readonly bytes: number;
}

/** Everything that comes over the wire from now on, in the bytes that the wire carries: text as the site's own server packs it. */
function watched(page: Page): () => Promise<readonly Fetched[]> {
  const coming: Promise<Fetched>[] = [];
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    coming.push(
      response
        .request()
        .sizes()
        .then(({ responseBodySize }) => ({ file: pathname, bytes: responseBodySize })),
    );
  });
  return () => Promise.all(coming);
}

function photosOf(fetched: readonly Fetched[]): readonly string[] {
  return [...new Set(fetched.map(({ file }) => file).filter((file) => file.startsWith('/base/photos/')))];
}

shown.describeInBrowser('a teardown with twelve photos on a phone', () => {
  // The pixels of a phone are denser than those of the page: three to one takes the larger pictures.
  it.each([LONG, SHORT])('%s: is under 400 KB before scrolling, and the photos come as they are scrolled to', async (slug) => {
    const phone = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 3, isMobile: true, hasTouch: true };
    const context = await shown.openWindow(phone);
    const page = await context.newPage();
    const fetched = watched(page);
    await page.goto(`${shown.origin}/base/teardowns/${slug}/`, { waitUntil: 'networkidle' });
    const before = await fetched();
    expect(before.map(({ file }) => file)).toContain(`/base/teardowns/${slug}/`);
    expect(before.some(({ file }) => file.endsWith('.woff2'))).toBe(true);
    expect(before.every(({ bytes }) => bytes > 0)).toBe(true);
    expect(before.reduce((sum, { bytes }) => sum + bytes, 0)).toBeLessThan(MOST_BYTES);
    expect(photosOf(before).length).toBeLessThan(4);
    for (const photo of await page.locator('figure.photo img').all()) await photo.scrollIntoViewIfNeeded();
    await expect.poll(async () => photosOf(await fetched()).length, { timeout: 10_000 }).toBe(12);
    expect(photosOf(await fetched()).filter((file) => !file.endsWith('-960.webp'))).toEqual([]);
    await context.close();
  });
});
