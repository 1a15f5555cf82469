import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/checks/index.ts';
import { RULES } from '../../src/checks/rules.ts';
import { checkText, markedLines } from './read-example.ts';

const checksFolder = new URL('../../src/checks/', import.meta.url);
const examplesFolder = new URL('examples/', checksFolder);
const examples = readdirSync(examplesFolder).map((name) => name.replace(/\.md$/, ''));

function exampleText(id: string): string {
  return readFileSync(new URL(`${id}.md`, examplesFolder), 'utf8');
}

describe('the example of each rule', () => {
  test.each(CHECKS.map((check) => [check.id, check] as const))('%s reports the marked lines and no other', (id, check) => {
    const text = exampleText(id);
    const { entry, reading, diagnostics } = checkText(id, text);
    expect(entry, JSON.stringify(reading, null, 1)).not.toBeNull();
    expect(reading.filter((finding) => finding.severity === 'error')).toEqual([]);
    const own = diagnostics.filter((diagnostic) => diagnostic.rule === id);
    expect(own.map((diagnostic) => diagnostic.line)).toEqual(markedLines(text, id));
    expect(own.length).toBeGreaterThan(0);
    expect(own.some((diagnostic) => diagnostic.severity === check.severity)).toBe(true);
  });

  test.each(examples)('%s marks only rules that report', (id) => {
    const text = exampleText(id);
    const rules = [...text.matchAll(/finding: ([a-z0-9-]+)/g)].map((match) => match[1] ?? '');
    expect(new Set(rules)).toEqual(new Set([id]));
  });

  test.each(examples)('%s draws no error of another rule', (id) => {
    const { diagnostics } = checkText(id, exampleText(id));
    expect(diagnostics.filter((diagnostic) => diagnostic.severity === 'error' && diagnostic.rule !== id)).toEqual([]);
  });

  test('a finding says what, why, what to do and its source', () => {
    for (const { id } of CHECKS) {
      for (const diagnostic of checkText(id, exampleText(id)).diagnostics.filter((candidate) => candidate.rule === id)) {
        expect(diagnostic.message).toMatch(/[.?]$/);
        expect(diagnostic.message).not.toMatch(/undefined|null|NaN|Infinity/);
        expect([diagnostic.why, diagnostic.advice, diagnostic.source].every((words) => words !== null && words.length > 0)).toBe(true);
      }
    }
  });
});

describe('the registry of rules', () => {
  test('holds every file of a check, and every check has its example', () => {
    const files = readdirSync(checksFolder).filter((name) => name.endsWith('.ts'));
    const declaring = files
      .filter((name) => /: Check (?:= )?\{/.test(readFileSync(new URL(name, checksFolder), 'utf8')))
      .map((name) => name.replace(/\.ts$/, ''));
    const ids = CHECKS.map((check) => check.id).toSorted();
    expect(ids).toEqual(declaring.toSorted());
    expect(ids).toEqual(examples.toSorted());
  });

  test('has each id once, in kebab case', () => {
    const ids = RULES.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  test('lets no source from memory decide an error', () => {
    expect(CHECKS.filter((check) => check.severity === 'error' && check.source.standing === 'memory')).toEqual([]);
  });
});
