import { describe, expect, test } from 'vitest';
import { checkOutput } from '../../src/pipeline/check-output.ts';
import { temporaryFolder, writeFiles } from './content-folder.ts';

function page(body: string): string {
  return `<!doctype html><html lang="en"><head><title>x</title><link rel="stylesheet" href="/s.css"></head><body>${body}</body></html>`;
}

function faults(files: Readonly<Record<string, string>>, base = '/', slugs: readonly string[] = []): string[] {
  const folder = temporaryFolder();
  writeFiles(folder, { 's.css': 'a{}', ...files });
  return checkOutput(folder, base, slugs).map((fault) => `${fault.page}: ${fault.message}`);
}

describe('the finished site', () => {
  test('links to pages, to places in pages, to files and to other hosts are in order', () => {
    const body =
      '<h1 id="x">x</h1><a href="/a/">a</a><a href="a/#y">a</a><a href="#x">x</a><a href="https://example.org/">e</a><a href="mailto:a@example.org">m</a><img src="/p.png" srcset="/p.png 1x, /p2.png 2x" alt=""><a href="/a/?q=1&amp;r=2#y">q</a>';
    expect(faults({ 'index.html': page(body), 'a/index.html': page('<p id="y">y</p>'), 'p.png': 'x', 'p2.png': 'x' })).toEqual([]);
  });

  test.each([
    ['<a href="/nowhere/">x</a>', 'The link "/nowhere/" leads nowhere'],
    ['<a href="b.html">x</a>', 'The link "b.html" leads nowhere'],
    ['<a href="/a/#z">x</a>', 'The link "/a/#z" names a place that the page does not have'],
    ['<a href="#z">x</a>', 'The link "#z" names a place that the page does not have'],
    ['x<img src="/q.png" alt="">', 'The link "/q.png" leads nowhere'],
    ['x<img srcset="/q.png 2x" src="/s.css" alt="">', 'The link "/q.png" leads nowhere'],
    ["<a href='/nowhere'>x</a>", 'The link "/nowhere" leads nowhere'],
    ['<a href=/nowhere>x</a>', 'The link "/nowhere" leads nowhere'],
    ['<a href="javascript:x">x</a>', 'The link "javascript:x" has a scheme that pages do not use'],
    ['<p id="d"></p><p id="d">x</p>', 'The id "d" stands twice'],
    ['', 'The page has no body'],
    ['<main><!-- nothing --></main>', 'The page has no body'],
  ])('%s', (body, message) => {
    expect(faults({ 'index.html': page(body), 'a/index.html': page('<p id="y">y</p>') })).toEqual([`index.html: ${message}`]);
  });

  test('a link written in text, a comment or a script is no link', () => {
    expect(faults({ 'index.html': page('x &lt;a href="/no/"&gt; <!-- <a href="/no/"> --><script>"<a href=/no/>"</script>') })).toEqual([]);
  });

  test('under a base path every link carries it', () => {
    const withBase = page('<a href="/sub/a/">a</a><a href="../sub/">x</a>').replace('/s.css', '/sub/s.css');
    expect(faults({ 'index.html': withBase, 'a/index.html': withBase.replace('../sub/', '../') }, '/sub/')).toEqual([]);
    expect(faults({ 'index.html': withBase.replace('/sub/a/', '/a/'), 'a/index.html': page('x') }, '/sub/')).toEqual([
      'a/index.html: The link "/s.css" lies outside the base path /sub/',
      'index.html: The link "/a/" lies outside the base path /sub/',
    ]);
  });

  test('a teardown without a page is a fault, and so is one whose page is empty', () => {
    expect(faults({ 'index.html': page('x'), 'teardowns/b/index.html': page('') }, '/', ['a', 'b'])).toEqual([
      'teardowns/b/index.html: The page has no body',
      'teardowns/a/index.html: This teardown has no page',
    ]);
  });
});
