/// <reference lib="dom" />
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SCHEME_SCRIPT } from '../../src/render/scheme-script.ts';
import { buildSmallSite, pageSource } from './built-site.ts';
import { showSite } from './shown-site.ts';

const shown = await showSite(() => buildSmallSite('/base/', ['tillmere-nub-20']));

describe('the policy of a built site', () => {
  it('states a strict policy in every page and in the headers for static hosts', () => {
    const hash = createHash('sha256').update(SCHEME_SCRIPT).digest('base64');
    const policy = `default-src 'none'; script-src 'self' 'sha256-${hash}'; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'`;
    for (const page of shown.site.pages.filter((address) => pageSource(shown.site, address).includes('class="sheet"'))) {
      const [stated] = /http-equiv="content-security-policy" content="[^"]*"/.exec(pageSource(shown.site, page).slice(0, 900)) ?? [];
      expect(stated?.replaceAll('&#39;', "'"), page).toBe(`http-equiv="content-security-policy" content="${policy}"`);
    }
    expect(readFileSync(join(shown.site.folder, '_headers'), 'utf8')).toContain(
      `Content-Security-Policy: ${policy}; frame-ancestors 'none'\n`,
    );
  });
});

shown.describeInBrowser('the colour scheme', () => {
  it('keeps the chosen scheme from page to page', async () => {
    const context = await shown.openWindow({ colorScheme: 'light', viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    const ground = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    await page.goto(`${shown.origin}/base/`);
    const paper = await ground();
    await page.locator('[data-scheme-switch]').click();
    const blueprint = await ground();
    await page.goto(`${shown.origin}/base/methods/`);
    expect(await ground()).toBe(blueprint);
    expect(blueprint).not.toBe(paper);
    await context.close();
  });

  it('that the reader chose stands at the first paint, before any file of script has come, and breaks no policy', async () => {
    const context = await shown.openWindow({ colorScheme: 'light', viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    const look = (): Promise<{ readonly ground: string; readonly scheme: string | undefined }> =>
      page.evaluate(() => ({
        ground: getComputedStyle(document.documentElement).backgroundColor,
        scheme: document.documentElement.dataset['scheme'],
      }));
    await page.route('**/*.js', () => undefined);
    await page.goto(`${shown.origin}/base/`, { waitUntil: 'commit' });
    await page.waitForFunction(() => performance.getEntriesByName('first-paint').length > 0);
    const paper = await look();
    await page.evaluate(() => {
      localStorage.setItem('scheme', 'blueprint');
    });
    await page.goto(`${shown.origin}/base/methods/`, { waitUntil: 'commit' });
    await page.waitForFunction(() => performance.getEntriesByName('first-paint').length > 0);
    const blueprint = await look();
    expect(paper.scheme).toBeUndefined();
    expect(blueprint.scheme).toBe('blueprint');
    expect(blueprint.ground).not.toBe(paper.ground);
    expect(said.filter((text) => /content security policy/i.test(text))).toEqual([]);
    await context.close();
  });
});
