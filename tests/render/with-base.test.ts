import { describe, expect, test } from 'vitest';
import { withBase } from '../../src/render/with-base.ts';

describe('the base path is put before the addresses of drawn HTML', () => {
  test.each(['/sub/', '/sub'])('%s', (base) => {
    const html =
      '<p><a class="x" href="/methods/x/">a</a> <a href="#d">b</a> <a href="https://example.org/">c</a> <a href="//example.org/">d</a> <code>&#x3C;a href="/no/"></code></p>' +
      '<form action="/search/" method="get"><img src="/photos/a.jpg" srcset="/photos/a.webp 400w, /photos/b.webp 800w" alt="/not an address"/></form>';
    expect(withBase(html, base)).toBe(
      '<p><a class="x" href="/sub/methods/x/">a</a> <a href="#d">b</a> <a href="https://example.org/">c</a> <a href="//example.org/">d</a> <code>&#x3C;a href="/no/"></code></p>' +
        '<form action="/sub/search/" method="get"><img src="/sub/photos/a.jpg" srcset="/sub/photos/a.webp 400w, /sub/photos/b.webp 800w" alt="/not an address"/></form>',
    );
  });

  test('a site at the root keeps every byte', () => {
    expect(withBase('<a href="/x/">x</a>', '/')).toBe('<a href="/x/">x</a>');
  });
});
