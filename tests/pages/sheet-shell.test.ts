import { describe, expect, test } from 'vitest';
import { shellHead, shellOpening } from '../../src/pages/sheet-shell.ts';
import type { SiteSettings } from '../../src/corpus/prepared.ts';
import { siteAddresses } from '../../src/pipeline/site-addresses.ts';

const site: SiteSettings = {
  ...{ name: 'A <bench>', author: 'x', description: 'x', address: 'https://bench.example/', numberPrefix: 'B' },
  ...{ licence: null, language: 'en', derating: null },
};
const addresses = siteAddresses('/sub/', site.address);
const page = { title: 'R "1"', description: 'x & y', canonical: '/teardowns/a/' };

describe('the head of a page', () => {
  test('escapes what the author wrote and gives whole addresses under the base path', () => {
    const head = shellHead(page, site, addresses);
    expect(head).toContain('<title>R &quot;1&quot; · A &lt;bench&gt;</title><meta name="description" content="x &amp; y">');
    expect(head).toContain('<link rel="canonical" href="https://bench.example/sub/teardowns/a/">');
    expect(head).toContain('<meta property="og:type" content="article">');
  });

  test('says nothing to share on a page that is not to be found, nor while the address of the site is not known', () => {
    expect(shellHead({ ...page, hidden: true }, site, addresses)).toMatch(/noindex(?!.*og:)/);
    const unknown = shellHead(page, { ...site, address: null }, siteAddresses('/', null));
    expect(unknown).not.toMatch(/og:|canonical|atom/);
  });

  test('sends a reader of a former address on, and names the present one even without an address of the site', () => {
    const moved = shellHead({ ...page, hidden: true, movedTo: '/teardowns/a/' }, { ...site, address: null }, siteAddresses('/sub/', null));
    expect(moved).toContain('<link rel="canonical" href="/sub/teardowns/a/">');
    expect(moved).toContain('<meta http-equiv="refresh" content="0; url=/sub/teardowns/a/">');
  });
});

test('the strip marks the word of the page, and the word above a page that stands under it', () => {
  expect(shellOpening({ ...page, current: 'Parts' }, site)).toContain('<a href="/parts/" aria-current="page">Parts</a>');
  expect(shellOpening({ ...page, current: 'Makers' }, site)).toContain('<a href="/parts/" aria-current="true">Parts</a>');
  expect(shellOpening(page, site)).not.toContain('aria-current');
});
