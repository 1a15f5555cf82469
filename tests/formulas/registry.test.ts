import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FORMULAS, formulaOf } from '../../src/formulas/index.ts';
import { SUBJECT_TITLES } from '../../src/formulas/subject-titles.ts';

const FOLDER = new URL('../../src/formulas/', import.meta.url);

describe('the list of formulas', () => {
  it('names every file of every subject folder', () => {
    const folders = readdirSync(FOLDER, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    const files = folders.flatMap((folder) =>
      readdirSync(new URL(`${folder.name}/`, FOLDER))
        .filter((file) => file !== 'index.ts')
        .map((file) => `${folder.name}/${file}`),
    );
    expect(FORMULAS.map((formula) => `${formula.subject}/${formula.id}.ts`).sort()).toEqual(files.sort());
  });

  it('has a title for every subject and none without', () => {
    expect([...new Set(FORMULAS.map((formula) => formula.subject))].sort()).toEqual(Object.keys(SUBJECT_TITLES).sort());
  });

  it('has every id once and finds it', () => {
    for (const formula of FORMULAS) expect(formulaOf(formula.id)).toBe(formula);
    expect(formulaOf('no-such-formula')).toBeNull();
  });
});

describe.each(FORMULAS.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
  it('says what it is, in words, in TeX and with a source', () => {
    for (const text of [
      formula.title,
      formula.meaning,
      formula.expression,
      formula.output.tex,
      formula.source.title,
      formula.source.section,
    ]) {
      expect(text.trim()).not.toBe('');
    }
    for (const symbol of Object.values(formula.inputs))
      expect(formula.expression.replaceAll(' ', '')).toContain(symbol.tex.replaceAll(' ', ''));
  });

  it('names exactly its inputs in every example', () => {
    expect(formula.examples.length).toBeGreaterThan(0);
    for (const example of formula.examples) expect(Object.keys(example.inputs).sort()).toEqual(Object.keys(formula.inputs).sort());
  });
});
