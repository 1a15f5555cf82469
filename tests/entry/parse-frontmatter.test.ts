import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { placeFindings } from '../../src/entry/place-findings.ts';

/** "rule line:column" of everything that is wrong with the data of a file. */
function faults(text: string): readonly string[] {
  return placeFindings({ file: 'a/index.md', text }, parseFrontmatter(text).findings).map((d) => `${d.rule} ${d.line}:${d.column}`);
}

describe('taking a file apart', () => {
  it('gives the data and the text with its offset in the file', () => {
    const text = '---\ntitle: One\n---\n\nProse.\n';
    const parsed = parseFrontmatter(text);
    expect(parsed.data).toEqual({ title: 'One' });
    expect(text.slice(parsed.textStart)).toBe(parsed.text);
    expect(parsed.text).toBe('\nProse.\n');
  });

  it('tolerates a byte order mark and lines that end in CR LF', () => {
    const text = '\uFEFF---\r\ntitle: One\r\nsummary: Two\r\n---\r\nProse.\r\n';
    const parsed = parseFrontmatter(text);
    expect(parsed.data).toEqual({ title: 'One', summary: 'Two' });
    expect(parsed.text).toBe('Prose.\r\n');
  });

  it('keeps a line of dashes in the prose as prose', () => {
    expect(parseFrontmatter('---\ntitle: One\n---\nabove\n\n---\n\nbelow\n').text).toBe('above\n\n---\n\nbelow\n');
  });

  it('keeps texts that YAML 1.1 would turn into something else', () => {
    const text = '---\na: 12:30\nb: yes\nc: on\nd: 2026-03-14\ne: 0x0A01912C 0x0002D12C\nf: 35:4:4\n---\n';
    expect(parseFrontmatter(text).data).toEqual({
      a: '12:30',
      b: 'yes',
      c: 'on',
      d: '2026-03-14',
      e: '0x0A01912C 0x0002D12C',
      f: '35:4:4',
    });
  });
});

describe('what an entry may not hold', () => {
  it.each([
    ['an empty file', '', ['empty-entry 1:1']],
    ['a file of blanks', ' \n\n', ['empty-entry 1:1']],
    ['no opening fence', 'title: One\n', ['missing-frontmatter 1:1']],
    ['no closing fence', '---\ntitle: One\n', ['missing-frontmatter 1:1']],
    ['an anchor and its alias', '---\na: &x 1\nb: *x\n---\n', ['yaml-refused 2:4', 'yaml-refused 3:4']],
    ['a merge key', '---\na: { <<: { b: c } }\n---\n', ['yaml-refused 2:6']],
    ['a tag', '---\na: !!str 1\n---\n', ['yaml-refused 2:4']],
    ['a reserved key', '---\n__proto__: { a: b }\nb: { constructor: c }\n---\n', ['yaml-refused 2:1', 'yaml-refused 3:6']],
    ['a key that stands twice', '---\na: b\na: c\nd: { e: f, e: g }\n---\n', ['duplicate-key 3:1', 'duplicate-key 4:12']],
    ['a tab as indentation', '---\na:\n\tb: c\n---\n', ['yaml-syntax 3:1']],
    ['a value that begins with @', '---\na: @b\nc: d\n---\n', ['yaml-syntax 2:4']],
    ['a value with a colon', '---\nnote: "x"\na: 5V: 3A\n---\n', ['yaml-syntax 3:4']],
  ])('%s', (_, text, expected) => {
    expect(faults(text)).toEqual(expected);
  });

  it('says what a colon inside brackets does, in words for authors', () => {
    const [only] = parseFrontmatter('---\nQ1: { role: switch, rating: 5V: 3A }\n---\n').findings;
    expect(only?.message).toBe('A colon and a space, or a dash and a space, begin something new inside brackets; put the text in quotes.');
  });

  it('reports faults of syntax on several lines in one run', () => {
    expect(faults('---\na: 5V: 3A\nb: c\nd: @e\nf: `g\n---\n').length).toBeGreaterThan(1);
  });

  it('nesting deeper than twenty levels', () => {
    const nested = (levels: number): string => `---\na: ${'['.repeat(levels)}x${']'.repeat(levels)}\n---\n`;
    expect(faults(nested(18))).toEqual([]);
    expect(faults(nested(21))[0]).toMatch(/^yaml-too-deep 2:/u);
    expect(faults(nested(50_000))).toHaveLength(1);
  });

  it('a file of more than 256 KB', () => {
    expect(faults(`---\ntitle: One\n---\n${'x'.repeat(256 * 1024)}`)).toEqual(['file-too-large 1:1']);
  });
});

describe('a number sign that cuts a value short', () => {
  it.each([
    ['rating: 420V #120uF', ['hash-cuts-value 2:9']],
    ['rating: 420 V # 120 µF', ['hash-cuts-value 2:9']],
    ['rating: "420V #120uF"', []],
    ['rating: 420 V   # as printed', []],
    ['rating: 420 V # 2 seen, one fitted', []],
    ['part: C#1', []],
  ])('%s', (line, expected) => {
    expect(faults(`---\n${line}\n---\n`)).toEqual(expected);
  });

  it('is named itself where it takes the closing bracket with it, and the faults beside it are found too', () => {
    const [first, ...others] = parseFrontmatter('---\nC5: { rating: 420V #120uF }\nC6: { rating: 5V: 3A }\nQ1: x\nQ1: y\n---\n').findings;
    expect(first?.message).toContain('the } behind it is not read');
    expect(faults('---\nC5: { rating: 420V #120uF }\nQ1: x\nQ1: y\n---\n')).toEqual(['yaml-syntax 2:20', 'duplicate-key 4:1']);
    expect(others.map(({ rule }) => rule)).toEqual(['yaml-syntax', 'duplicate-key']);
  });

  it.each(['a: { b: "x #1 }" }', "a: [ 'x #1 ]' ]", 'a: { b: c } # all of it }', 'a: x # {b}'])('%s is in order', (line) => {
    expect(faults(`---\n${line}\n---\n`)).toEqual([]);
  });

  it('leaves the value that was read in place', () => {
    expect(parseFrontmatter('---\nrating: 420V #120uF\n---\n').data).toEqual({ rating: '420V' });
  });
});

describe('any text at all', () => {
  it('never throws', () => {
    const pieces = fc.constantFrom(
      '---\n',
      '---',
      'a: ',
      '{',
      '}',
      '[',
      ']',
      ',',
      '"',
      "'",
      '\n',
      '  ',
      '\t',
      '&x ',
      '*x',
      '!!t ',
      '|',
      '>',
      '#',
      '\r\n',
      '? ',
      '- ',
      '\uFEFF',
      '%',
      '@',
      '\0',
      'é',
      '𝄞',
      '<<: ',
      '...',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (written) => {
        const text = `---\n${written.join('')}\n---\n`;
        const parsed = parseFrontmatter(text);
        for (const diagnostic of placeFindings({ file: 'f', text }, parsed.findings)) {
          expect(diagnostic.line).toBeGreaterThan(0);
          expect(diagnostic.column).toBeGreaterThan(0);
        }
        expect(parsed.data !== undefined || parsed.findings.length > 0).toBe(true);
      }),
      { seed: 20260314, numRuns: 2000 },
    );
  });
});
