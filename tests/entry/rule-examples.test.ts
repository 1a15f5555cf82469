import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { READING_RULES } from '../../src/entry/reading-rules.ts';
import { readFile } from './reading.ts';

const FOLDER = 'src/entry/examples';

/** No file of 256 KB is kept for its own sake; `parse-frontmatter` tests that rule. */
const WITHOUT_EXAMPLE = ['file-too-large'];

describe('every rule of the reader has an example', () => {
  it('and every example has a rule', () => {
    const rules = READING_RULES.map(({ id }): string => id).filter((id) => !WITHOUT_EXAMPLE.includes(id));
    expect(readdirSync(FOLDER).sort()).toEqual(rules.map((id) => `${id}.md`).sort());
  });
});

describe('an example is reported at the lines that it marks', () => {
  it.each(readdirSync(FOLDER).map((file) => [file.replace('.md', '')] as const))('%s', (rule) => {
    const text = readFileSync(`${FOLDER}/${rule}.md`, 'utf8');
    const marked = text.split('\n').flatMap((line, index) => (line.includes(`# finding: ${rule}`) ? [index + 1] : []));
    const { diagnostics } = readFile(text);
    const reported = [...new Set(diagnostics.filter((each) => each.rule === rule).map(({ line }) => line))];
    // Files without data have no line that could carry a mark; they are reported at their first line.
    expect(reported).toEqual(marked.length === 0 ? [1] : marked);
  });
});
