import { describe, expect, test } from 'vitest';
import type { NamesInReach } from '../../src/markdown/named-directives.ts';
import { placeProse } from '../../src/markdown/place-prose.ts';
import { renderProse } from '../../src/markdown/render-prose.ts';
import type { Value } from '../../src/values/value.ts';

const density: Value = {
  dimension: 'power density',
  low: 9.7e5,
  nominal: 9.8e5,
  high: 9.9e5,
  significant: 2,
  origin: { evidence: 'measured', written: '0.98 W/cm³', at: 'body' },
};

const names: NamesInReach = {
  values: { density, mass: { missing: true, reason: 'the mass is not given', needs: ['mass'] } },
  showValue: (value) => `${String(value.nominal / 1e6)} W/cm³`,
  parts: new Map([['U2', 'part-u2']]),
  ports: new Map([['C1', 'port-c1']]),
  photos: ['case.jpg', 'top.jpg', 'board side.jpg'],
  methods: new Map([['peak-of-the-mains', 'Peak of the mains']]),
  tables: new Set(['port-share', 'ports']),
  allTables: new Set(['port-share', 'ports', 'insulation']),
};

function prose(text: string, startOffset = 0): ReturnType<typeof renderProse> {
  return renderProse({ text, startOffset, slug: 'lm-q100', names });
}

/** The words of the page, entities read back. */
function words(html: string): string {
  return html
    .replace(/<[^>]*>/g, '')
    .replaceAll('&#x3C;', '<')
    .replaceAll('&#x26;', '&')
    .trim();
}

function rules(text: string): string[] {
  return prose(text).findings.map((finding) => finding.rule);
}

describe('what the trade writes comes out as written', () => {
  test.each([
    '100~240V~50/60Hz',
    '100-240 V~ 50/60 Hz 1.8 A',
    '2.9" x 2.9"',
    '3.3--21V',
    '5V:3A',
    '12:30',
    '1:N',
    'ratio 35:4:4',
    '5 V⎓3 A...',
    'a -- b "c" \'d\'',
    'Q1:Q2',
    '20V:5A:100W',
    'see:this',
    'C1:65W+C2:30W',
    'ends with a colon:',
    '::',
    ':-)',
    '12:30[am]x',
    '68*52*29mm',
    '68 * 52 * 29 mm',
    '4*470µF',
  ])('%s', (text) => {
    // But for the space before a unit, which does not break.
    expect(words(prose(text).html).replaceAll('\u00a0', ' ')).toBe(text);
  });

  test('two tildes strike through, one does not', () => {
    expect(prose('~~gone~~').html).toBe('<p><del>gone</del></p>');
    expect(prose('100~240V~').html).not.toContain('<del>');
  });

  test('a clock time or a ratio is no directive and gives no finding', () => {
    expect(rules('At 12:30 it drew 5V:3A; turns 35:4:4, 1:N, see Q1:Q2.')).toEqual([]);
  });

  test('stars between digits are kept and remarked on', () => {
    const { findings } = prose('The shell is 68*52*29mm.', 100);
    expect(findings).toMatchObject([
      { rule: 'prose-star-between-digits', severity: 'warning', where: { in: 'text', start: 114, end: 119 } },
    ]);
  });

  test('a row with more cells than its heading is an error at the first extra cell', () => {
    const text = '| a | b |\n|---|---|\n| 1 | 2 | 3 |\n';
    const { findings } = prose(text);
    expect(findings).toMatchObject([{ rule: 'prose-table-cells', severity: 'error' }]);
    const where = findings[0]?.where;
    expect(where?.in === 'text' ? text.slice(where.start, where.end) : '').toContain('3');
  });
});

test('a number stays on one line with its unit, but not in code, which is copied', () => {
  expect(prose('At 230 V it takes *81 mW* and `20 V`.').html).toBe(
    '<p>At 230\u00a0V it takes <em>81\u00a0mW</em> and <code>20 V</code>.</p>',
  );
});

describe('directives', () => {
  test('a value is quoted by name, with its unit', () => {
    expect(prose('It is :value[density] dense.').html).toBe(
      '<p>It is <span class="value" data-value="density">0.98\u00a0W/cm³</span> dense.</p>',
    );
  });

  test('a value that is missing says so in the page and in a finding', () => {
    const { html, findings } = prose(':value[mass]');
    expect(html).toContain('not known');
    expect(findings).toMatchObject([{ rule: 'prose-value-missing', message: 'mass is not known: the mass is not given' }]);
  });

  test('part, port, photo, method', () => {
    expect(prose(':part[U2]').html).toContain('<a class="part-reference" href="#part-u2">U2</a>');
    expect(prose(':port[C1]').html).toContain('<a class="port-reference" href="#port-c1">C1</a>');
    expect(prose(':photo[3 B4]').html).toContain('<a class="photo-reference" href="#photo-3-B4">photo 3, B4</a>');
    expect(prose(':photo[2]').html).toContain('<a class="photo-reference" href="#photo-2">photo 2</a>');
    expect(prose(':method[peak-of-the-mains]').html).toContain(
      '<a class="method-reference" href="/methods/peak-of-the-mains/">Peak of the mains</a>',
    );
  });

  test.each([
    [':value[densty]', 'did you mean "density"?'],
    [':part[U3]', 'There is no part "U3"'],
    [':photo[4]', 'There is no photo 4'],
    [':photo[B4]', 'is not a photo number'],
    [':photo[3 E4]', 'There is no zone E4 in a photo'],
    [':photo[3 B7]', 'There is no zone B7 in a photo'],
    [':value[__proto__]', 'There is no value "__proto__"'],
    ['::table{port-shar}', 'did you mean "port-share"?'],
    [':valu[density]', 'did you mean "value"?'],
    [':nonsense[x]', 'is not a directive'],
    ['::nonsense{x}', 'is not a directive'],
    [':value', 'names nothing'],
  ])('%s stays as written and is reported where it stands', (text, message) => {
    const { html, findings } = prose(`Before.\n\n${text}\n`, 50);
    expect(words(html)).toContain(text);
    expect(findings).toHaveLength(1);
    expect(findings[0]?.message).toContain(message);
    expect(findings[0]?.where).toEqual({ in: 'text', start: 59, end: 59 + text.length });
  });

  test('a container that nobody declared keeps its fences and its content', () => {
    const { html, findings } = prose(':::warning[Hot]\nInside *it*.\n:::\n');
    expect(html).toBe('<p>:::warning[Hot]</p>\n<p>Inside <em>it</em>.</p>\n<p>:::</p>');
    expect(findings).toHaveLength(1);
  });

  test('a directive works inside a container, a list, a table cell, a heading and an emphasis', () => {
    expect(prose(':::x\n:part[U2]\n:::').html).toContain('href="#part-u2"');
    expect(prose('- :part[U2]').html).toContain('<li><a class="part-reference"');
    expect(prose('| a |\n|---|\n| :part[U2] |').html).toContain('<td><a class="part-reference"');
    expect(prose('## Why :part[U2]').headings).toEqual([{ depth: 2, id: 'why-u2', text: 'Why U2' }]);
    expect(prose('*:value[density]*').html).toContain('<em><span class="value"');
  });

  test('a table is a place for the page to fill, and is listed as placed', () => {
    for (const text of ['::table{port-share}', '::table[port-share]', '::table{#port-share}', ':table[port-share]']) {
      const { html, placed, findings } = prose(`A\n\n${text}\n\nB`);
      expect(html).toContain('<div data-table="port-share"></div>');
      expect(placed).toEqual(['port-share']);
      expect(findings).toEqual([]);
      expect(placeProse(html).map((piece) => piece.kind)).toEqual(['html', 'table', 'html']);
    }
  });

  test('a table without data, and one placed twice, give a finding', () => {
    expect(rules('::table{insulation}')).toEqual(['prose-table-empty']);
    expect(prose('::table{ports}\n\n::table{ports}')).toMatchObject({ placed: ['ports'], findings: [{ rule: 'prose-table-twice' }] });
  });

  test('without a readable entry no name is judged, and the words stay', () => {
    const { html, findings } = renderProse({ text: 'A :value[x].', startOffset: 0, slug: 'x', names: null });
    expect(html).toBe('<p>A :value[x].</p>');
    expect(findings).toEqual([]);
  });
});

describe('HTML of the author', () => {
  test.each([
    ['<script>alert(1)</script>', 'The element <script> was removed'],
    ['<p style="color:red">x</p>', 'The attribute style of <p> was removed'],
    ['<p onclick="alert(1)">x</p>', 'The attribute onclick of <p> was removed'],
    ['<iframe src="https://example.org"></iframe>', 'The element <iframe> was removed'],
    ['<a href="javascript:alert(1)">x</a>', 'The link to "javascript:alert(1)" was removed'],
    ['[x](javascript:alert(1))', 'The link to "javascript:alert(1)" was removed'],
    ['[x](data:text/html,hi)', 'The link to "data:text/html,hi" was removed'],
    ['<img src="data:image/png;base64,AA">', 'The element <img> was removed'],
    ['<svg><script>1</script></svg>', 'The element <svg> was removed'],
    ['<div data-table="ports"></div>', 'The attribute data-table of <div> was removed'],
    ['<h2 id="parts">x</h2>', 'The attribute id of <h2> was removed'],
    ['<style>p { color: red }</style>', 'The element <style> was removed'],
    ['<form action="https://example.org"><input name="q"></form>', 'The element <form> was removed'],
    ['<base href="https://example.org">', 'The element <base> was removed'],
    ['<meta http-equiv="refresh" content="0">', 'The element <meta> was removed'],
  ])('%s', (text, message) => {
    const { html, findings } = prose(`One.\n\n${text}\n`, 10);
    expect(html).not.toMatch(/script|style|onclick|iframe|javascript|data:|<img|<svg|data-table|id="parts"|<form|<base|<meta/);
    expect(findings.map((finding) => finding.message)).toContainEqual(expect.stringContaining(message));
    const where = findings[0]?.where;
    expect(where?.in === 'text' ? where.start : -1).toBe(16);
  });

  test('a footnote may hold removed HTML too', () => {
    expect(rules('A[^1]\n\n[^1]: <script>\n\nB')).toEqual(['prose-html-removed']);
  });

  test('harmless HTML stays without a finding', () => {
    const text = 'H<sub>2</sub>O <kbd>x</kbd>\n\n<details><summary>More</summary>\n\n*In* it.\n\n</details>';
    expect(prose(text).html).toBe(
      '<p>H<sub>2</sub>O <kbd>x</kbd></p>\n<details><summary>More</summary>\n<p><em>In</em> it.</p>\n</details>',
    );
    expect(prose(text).findings).toEqual([]);
  });

  test('footnotes, task lists, aligned tables and code pass without a finding', () => {
    const text = 'A[^1] and B[^1]\n\n[^1]: The note.\n\n- [x] done\n\n| a | b |\n|--:|:-:|\n| 1 | 2 |\n\n```yaml\na: 1\n```\n';
    const { html, findings } = prose(text);
    expect(findings).toEqual([]);
    expect(html).toContain('id="note-fn-1"');
    expect(html).toContain('href="#note-fn-1"');
    expect(html).toContain('<td class="align-end">1</td>');
    expect(html).toContain('<input type="checkbox" checked disabled>');
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('nobody can write the word that stands for our own markup', () => {
    expect(prose('&#xE000;0&#xE001; \uE000x-0\uE001 :part[U2]').html.match(/<a /g)).toHaveLength(1);
  });
});

describe('headings', () => {
  test('ids come from the words, keep numbers apart, and are unique', () => {
    const { headings } = prose('## 65.5 W at 20 V\n\n## 655 W\n\n## Größe\n\n## Größe\n\n## ---x---\n');
    expect(headings.map((heading) => heading.id)).toEqual(['65-5-w-at-20-v', '655-w', 'größe', 'größe-2', 'x']);
  });

  test('the page keeps its one first-level heading', () => {
    expect(prose('# Top\n\n## Under\n').html).toBe('<h2 id="top">Top</h2>\n<h3 id="under">Under</h3>');
    expect(prose('<h1>Top</h1>').html).toBe('<h2 id="top">Top</h2>');
    expect(prose('## Top\n').html).toBe('<h2 id="top">Top</h2>');
  });

  test('an id that the page uses itself is not given twice', () => {
    const { headings } = renderProse({ text: '## Parts\n', startOffset: 0, slug: 'x', names, isTakenId: (id) => id === 'parts' });
    expect(headings.map((heading) => heading.id)).toEqual(['text-parts']);
  });
});

describe('links', () => {
  test.each([
    ['../lm-q65/', '/teardowns/lm-q65/'],
    ['../lm-q65/index.md', '/teardowns/lm-q65/'],
    ['/teardowns/lm-q65', '/teardowns/lm-q65/'],
    ['/methods/peak-of-the-mains/', '/methods/peak-of-the-mains/'],
    ['/', '/'],
  ])('%s is kept rooted and without the base path', (written, path) => {
    const { html, links } = prose(`[x](${written})`);
    expect(links).toMatchObject([{ path, written }]);
    expect(html).toContain(`href="${path}"`);
  });

  test('a fragment, another host and an address for mail are no links of this site', () => {
    expect(prose('[a](#x) [b](https://example.org/) [c](mailto:a@example.org) <https://example.org>').links).toEqual([]);
  });
});

describe('pictures', () => {
  test('one of the photos leads to where it stands framed', () => {
    const { html, findings } = prose('See ![the board](board%20side.jpg) here.');
    expect(html).toBe('<p>See <a href="#photo-3">photo 3, the board</a> here.</p>');
    expect(findings).toEqual([]);
  });

  test('another local picture is left out of the page with a finding, and listed so that its file can be looked for', () => {
    const { html, images, findings } = prose('See ![the board](side.jpg) here.');
    expect(html).toBe('<p>See  here.</p>');
    expect(images.map((image) => image.path)).toEqual(['side.jpg']);
    expect(findings).toMatchObject([{ rule: 'prose-image-unlisted', severity: 'warning' }]);
  });

  test('a picture without alternative text is an error', () => {
    expect(rules('![](board.jpg)')).toContain('prose-image-alt');
    expect(rules('![ ][b]\n\n[b]: board.jpg')).toContain('prose-image-alt');
  });

  test.each(['![x](https://example.org/x.png)', '![x](data:image/png;base64,AA)', '![x](//example.org/x.png)'])(
    '%s is left out',
    (text) => {
      expect(prose(text).html).not.toMatch(/img|example|data:/);
      expect(rules(text)).toEqual(['prose-image-remote']);
    },
  );
});
