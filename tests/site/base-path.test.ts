import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildSmallSite, pageSource, type BuiltSite } from './built-site.ts';

/** Every address that a page links to or loads. */
function addressesOf(html: string): string[] {
  return [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map((match) => match[1] ?? '');
}

describe('a site under /sub/', () => {
  let site: BuiltSite;
  beforeAll(async () => {
    site = await buildSmallSite('/sub/', ['skelderby-trine-65']);
  });

  it('links and loads nothing outside its base path', () => {
    for (const page of site.pages) {
      const outside = addressesOf(pageSource(site, page)).filter((address) => !/^(?:\/sub\/|#|https?:\/\/)/.test(address));
      expect(outside, page).toEqual([]);
    }
  });

  it('links only to pages, files and places that exist', () => {
    const ids = new Map(
      site.pages.map((page) => [page, new Set([...pageSource(site, page).matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]))]),
    );
    const broken: string[] = [];
    for (const page of site.pages) {
      for (const address of addressesOf(pageSource(site, page))) {
        if (/^https?:/.test(address)) continue;
        // What a page is asked for with is its own business.
        const [path = '', fragment] = address.replace(/\?[^#]*/, '').split('#');
        const target = path === '' ? page : path;
        const exists = ids.has(target) || existsSync(join(site.folder, decodeURIComponent(target.slice('/sub/'.length))));
        if (!exists || (fragment !== undefined && fragment !== '' && ids.get(target)?.has(decodeURIComponent(fragment)) !== true))
          broken.push(`${page} → ${address}`);
      }
    }
    expect(broken).toEqual([]);
  });
});

describe('a site without content', () => {
  it('says how to write the first entry', async () => {
    const site = await buildSmallSite('/', []);
    const home = pageSource(site, '/');
    expect(home).toContain('npx seamline new');
    expect(home).toContain('npx seamline check');
    expect(home.match(/<h1>/g)).toHaveLength(1);
  });
});
