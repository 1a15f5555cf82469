import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { feedEntries } from './feed-entries.ts';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildSmallSite, pageSource, type BuiltSite } from './built-site.ts';

const ADDRESS = 'https://bench.example/';
const BASE = '/tear/';
const RECALLED = `---
title: Called back
status: published
published: 2026-07-01
summary: A 20 W cube that should go back.
device: { maker: Oddlestone, name: Cube 20, kind: wall charger }
recall: { authority: The market office, date: 2026-07-10, url: 'https://office.example/20', hazard: the prongs come off }
former addresses: [/teardowns/first-name/, /old/cube.html]
---

Nothing more. [The other one](/teardowns/skelderby-trine-65/).
`;
/** Words that stand in no other entry: in the data, in the prose, as maker, part, port and topology. */
const DRAFT = `---
title: Quibbleword secret
status: draft
device: { maker: Quibbleword, name: Hush 30, kind: wall charger }
stages:
  main: { is: flyback, mode: quasi-resonant }
parts:
  main:
    Q1: { role: switch, maker: Quibblewordparts, number: QUIBBLEWORD-650, rating: "650 V, 190 mΩ" }
---

The quibbleword stays in the drawer.
`;

let site: BuiltSite;
beforeAll(async () => {
  site = await buildSmallSite(BASE, ['skelderby-trine-65'], {
    address: ADDRESS,
    files: { 'teardowns/cube-20/index.md': RECALLED, 'teardowns/hush-30/index.md': DRAFT },
  });
});

function read(file: string): string {
  return readFileSync(join(site.folder, file), 'utf8');
}

describe('a draft', () => {
  it('has its words, its maker, its part and its address in no file of the site', () => {
    const files = readdirSync(site.folder, { recursive: true, withFileTypes: true }).filter((file) => file.isFile());
    expect(files.length).toBeGreaterThan(50);
    const leaks = files
      .map((file) => join(file.parentPath, file.name))
      .filter((path) => /quibbleword|hush-30/i.test(path + readFileSync(path, 'latin1')));
    expect(leaks).toEqual([]);
  });
});

describe('a recall', () => {
  it('stands in the register and in the search, where readers come from', () => {
    expect(read('index.html')).toMatch(/Cube 20<\/a><span class="kind">[^<]*, <span class="mk error">.{0,200}<b>recalled<\/b>/u);
    const found = readdirSync(join(site.folder, 'search/found')).map((name) => read(join('search/found', name)));
    expect(found.join('\n')).toMatch(/"Recalled · /u);
  });
});

describe('the feed', () => {
  it('is well-formed, names the newest first, and every address in it is whole and under the base path', () => {
    const feed = read('feed.xml');
    const entries = feedEntries(feed);
    expect(entries.map((entry) => entry.get('link'))).toEqual([
      'https://bench.example/tear/teardowns/cube-20/',
      'https://bench.example/tear/teardowns/skelderby-trine-65/',
    ]);
    for (const [, link = ''] of feed.matchAll(/\s(?:href|src)="([^"]*)"/g)) expect(link.startsWith(`${ADDRESS}tear/`), link).toBe(true);
  });

  it('keeps the id that an entry had under its first name, and says when a device is recalled', () => {
    const [cube] = feedEntries(read('feed.xml'));
    expect(cube?.get('id')).toBe('tag:bench.example,2026-07-01:teardowns/first-name');
    expect(cube?.get('title')).toBe('Recalled: Oddlestone Cube 20: Called back');
    expect(cube?.get('summary')).toContain('the prongs come off');
    expect(cube?.get('updated')).toBe('2026-07-01T00:00:00Z');
  });

  it('is named in the head of every page and linked from the register', () => {
    expect(pageSource(site, `${BASE}teardowns/cube-20/`)).toContain('type="application/atom+xml" href="/tear/feed.xml"');
    expect(pageSource(site, BASE)).toContain('<a href="/tear/feed.xml">');
  });
});

describe('a recall', () => {
  it('stands on its sheet before everything else, with the notice', () => {
    const html = pageSource(site, `${BASE}teardowns/cube-20/`);
    const notice = html.indexOf('href="https://office.example/20"');
    expect(notice).toBeGreaterThan(html.indexOf('<main'));
    expect(notice).toBeLessThan(html.indexOf('<h1'));
  });
});

describe('where the address of a sheet is shared', () => {
  const properties = (page: string): ReadonlyMap<string, string> =>
    new Map(
      [...pageSource(site, page).matchAll(/<meta property="([^"]*)" content="([^"]*)"/g)].map(([, name = '', said = '']) => [name, said]),
    );

  it('its head gives title, summary, and an image of its own under a whole address, with size and description', () => {
    const said = properties(`${BASE}teardowns/skelderby-trine-65/`);
    expect(said.get('og:title')).toBe('Skelderby Trine 65');
    expect(said.get('og:description')).toContain('65 W three-port wall charger');
    expect(said.get('og:url')).toBe('https://bench.example/tear/teardowns/skelderby-trine-65/');
    expect(said.get('og:image')).toBe('https://bench.example/tear/teardowns/skelderby-trine-65/sharing.png');
    expect([said.get('og:image:width'), said.get('og:image:height')]).toEqual(['1200', '630']);
    expect(said.get('og:image:alt')).toContain('65');
    expect(readFileSync(join(site.folder, 'teardowns/skelderby-trine-65/sharing.png')).subarray(1, 4).toString('latin1')).toBe('PNG');
  });

  it('a recalled device is shown as recalled', () => {
    expect(properties(`${BASE}teardowns/cube-20/`).get('og:image:alt')).toMatch(/^Recalled/u);
  });

  it('pages that are hidden from search engines say nothing', () => {
    expect(properties(`${BASE}404.html`).size).toBe(0);
  });
});

describe('the site map', () => {
  it('lists whole addresses of all pages but the hidden ones and those that only lead elsewhere', () => {
    const listed = [...read('sitemap.xml').matchAll(/<loc>([^<]*)<\/loc>/g)].map((match) => match[1] ?? '');
    const shown = site.pages.filter((page) => !/content="noindex"|http-equiv="refresh"/.test(pageSource(site, page)));
    expect(listed.toSorted()).toEqual(shown.map((page) => new URL(page, ADDRESS).href).toSorted());
    expect(listed).not.toContain('https://bench.example/tear/404.html');
    expect(listed).toContain('https://bench.example/tear/teardowns/cube-20/');
  });
});

describe('a link that an author writes from the root', () => {
  it('carries the base path', () => {
    expect(pageSource(site, `${BASE}teardowns/cube-20/`)).toContain('<a href="/tear/teardowns/skelderby-trine-65/">The other one</a>');
  });
});
