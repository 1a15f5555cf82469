import { describe, expect, it } from 'vitest';
import { entryTemplate } from '../../src/entry/entry-template.ts';
import { readFile } from './reading.ts';

const TEMPLATE = entryTemplate('lm-q100');

describe('the template of a new entry', () => {
  it('reports every blank as long as it is not filled in', () => {
    const blanks =
      TEMPLATE.split('\n')
        .slice(3)
        .join('\n')
        .match(/‹[^›]*›/gu)?.length ?? 0;
    const { diagnostics } = readFile(TEMPLATE);
    expect(blanks).toBeGreaterThan(30);
    expect(diagnostics.filter(({ rule }) => rule === 'blank-left').length).toBe(blanks);
    expect(diagnostics.filter(({ rule, severity }) => severity === 'error' && rule !== 'blank-left').map(({ message }) => message)).toEqual(
      [],
    );
  });

  it('has no finding once its blanks are filled as the examples show', () => {
    const filled = TEMPLATE.replace(/‹([^›]*)›/gu, '$1');
    const { entry, diagnostics } = readFile(filled);
    expect(diagnostics.map(({ line, column, message }) => `${line}:${column} ${message}`)).toEqual([]);
    expect(entry?.ports).toHaveLength(2);
    expect(entry?.parts.length).toBeGreaterThan(10);
  });

  it('names the folder it is for', () => {
    expect(TEMPLATE).toContain('"lm-q100"');
  });
});
