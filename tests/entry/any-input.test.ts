import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { READING_RULES } from '../../src/entry/reading-rules.ts';
import { readEntry } from '../../src/entry/read-entry.ts';
import { readFile } from './reading.ts';

const EXAMPLE = readFileSync('tests/entry/example/index.md', 'utf8');
const RULES: ReadonlySet<string> = new Set(READING_RULES.map(({ id }) => id));

describe('no input makes the reader of entries throw', () => {
  it('not any data at all', () => {
    fc.assert(
      fc.property(fc.anything(), (frontmatter) => {
        const { entry, findings } = readEntry({ slug: 's', file: 'f', frontmatter });
        expect(entry !== null || findings.length > 0).toBe(true);
      }),
      { seed: 20260314, numRuns: 1000 },
    );
  });

  it('not the example with pieces cut out, doubled and put in', () => {
    const pieces = fc.constantFrom(
      '',
      ':',
      ' ',
      '\n',
      '"',
      '{',
      '}',
      '[',
      ']',
      '#',
      '%',
      '+',
      '(',
      '–',
      'µ',
      '\u0000',
      '0',
      '1e3',
      'then',
      ',',
      '×',
      '&a',
      '*a',
      '<<',
      '~',
      '\t',
      '😀',
    );
    const change = fc.record({ at: fc.nat(EXAMPLE.length), cut: fc.nat(12), piece: pieces });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        let text = EXAMPLE;
        for (const { at, cut, piece } of changes) text = text.slice(0, at) + piece + text.slice(at + cut);
        for (const diagnostic of readFile(text).diagnostics) {
          expect(RULES.has(diagnostic.rule), diagnostic.rule).toBe(true);
          expect(diagnostic.line).toBeLessThanOrEqual(text.split('\n').length);
          expect(diagnostic.column).toBeGreaterThan(0);
        }
      }),
      { seed: 20260314, numRuns: 400 },
    );
  }, 60_000);
});

describe('the rules of the reader', () => {
  it('have each one id, and say why and what to do', () => {
    expect(RULES.size).toBe(READING_RULES.length);
    for (const rule of READING_RULES) {
      expect(rule.id).toMatch(/^[a-z]+(?:-[a-z]+)*$/u);
      expect(rule.why.length).toBeGreaterThan(20);
      expect(rule.advice).not.toBe('');
    }
  });
});
