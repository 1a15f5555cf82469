import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exampleLines } from '../../../src/site/data/example-lines.ts';

const FOLDER = new URL('../../../src/checks/examples/', import.meta.url);

describe('the example on a rule’s page', () => {
  it('shows the lines as an author writes them, and tells which are reported', () => {
    const text =
      '---\nparts:\n  C1: { rating: 22 µF 400 V } # finding: capacitor-voltage-margin\n---\n\nIt is safe. <!-- finding: safe-as-verdict -->\n';
    expect(exampleLines(text, 'capacitor-voltage-margin').map((line) => [line.number, line.text, line.reported])).toEqual([
      [1, '---', false],
      [2, 'parts:', false],
      [3, '  C1: { rating: 22 µF 400 V }', true],
      [4, '---', false],
      [5, '', false],
      [6, 'It is safe.', false],
    ]);
  });

  it.each(readdirSync(FOLDER))('%s has a reported line, and no mark is left in it', (name) => {
    const lines = exampleLines(readFileSync(new URL(name, FOLDER), 'utf8'), name.replace(/\.md$/, ''));
    expect(lines.some((line) => line.reported)).toBe(true);
    expect(lines.map((line) => line.text).join('\n')).not.toContain('finding:');
  });
});
