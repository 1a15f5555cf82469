import { describe, expect, it } from 'vitest';
import type { DataPath, Finding } from '../../src/diagnostics/finding.ts';
import { answerAmong } from '../../src/entry/answer-for.ts';
import { placeFindings } from '../../src/entry/place-findings.ts';

function at(text: string, path: DataPath, part: 'key' | 'value', span?: { start: number; end: number }): string {
  const finding: Finding = {
    rule: 'r',
    severity: 'note',
    where: span === undefined ? { in: 'data', path, part } : { in: 'data', path, part, span },
    message: 'm',
  };
  return placeFindings({ file: 'f', text }, [finding])
    .map((d) => `${d.line}:${d.column}-${d.endLine}:${d.endColumn}`)
    .join();
}

const FILE = `---
title: One
body:
  size: 68 × 52 × 29 mL
  mass: "187 \\u0067 ± 1 mL"
ports:
  C1: { offers: [5 V 3 A, 'it''s 9 V'] }
"quoted key": |
  first line
  second 12 mL
folded: >-
  one
  two
---
`;

describe('the place of a finding in the whole file', () => {
  it.each([
    ['a plain value', ['body', 'size'], 'value', undefined, '4:9-4:24'],
    ['a key', ['body', 'size'], 'key', undefined, '4:3-4:7'],
    ['a piece of a plain value', ['body', 'size'], 'value', { start: 13, end: 15 }, '4:22-4:24'],
    ['a piece behind an escape', ['body', 'mass'], 'value', { start: 10, end: 12 }, '5:25-5:27'],
    ['an item of a list', ['ports', 'C1', 'offers', 0], 'value', undefined, '7:18-7:25'],
    ['a piece behind a doubled quote', ['ports', 'C1', 'offers', 1], 'value', { start: 5, end: 8 }, '7:34-7:37'],
    ['a piece of a block of lines', ['quoted key'], 'value', { start: 18, end: 20 }, '10:10-10:12'],
    ['a piece of a folded block', ['folded'], 'value', { start: 4, end: 7 }, '13:3-13:6'],
    ['a quoted key', ['quoted key'], 'key', undefined, '8:1-8:13'],
    ['a group: its key', ['body'], 'value', undefined, '3:1-3:5'],
    ['a field that is not there: the key above it', ['body', 'volume'], 'value', undefined, '3:1-3:5'],
    ['nothing at all: the first line', ['device'], 'value', undefined, '1:1-1:4'],
  ] as const)('%s', (_, path, part, span, expected) => {
    expect(at(FILE, path, part, span)).toBe(expected);
  });

  it('counts columns in UTF-16 units and lines that end in CR LF', () => {
    expect(at('---\r\ntitle: One\r\nbody: { mass: 𝄞 187 mL }\r\n---\r\n', ['body', 'mass'], 'value', { start: 7, end: 9 })).toBe(
      '3:22-3:24',
    );
  });

  it('sorts by place and not by the order of finding', () => {
    const finding = (path: DataPath): Finding => ({
      rule: 'r',
      severity: 'note',
      where: { in: 'data', path, part: 'key' },
      message: String(path[0]),
    });
    const diagnostics = placeFindings({ file: 'f', text: FILE }, [finding(['ports']), finding(['title']), finding(['body'])]);
    expect(diagnostics.map((d) => d.message)).toEqual(['title', 'body', 'ports']);
  });
});

describe('the answer to a finding', () => {
  const answers = [
    { to: 'capacitor-voltage-margin', at: 'C21', because: 'One', path: ['answers', 0] },
    { to: 'label-plausible', at: null, because: 'Two', path: ['answers', 1] },
  ];
  const finding = (rule: string, subject?: string): Finding => ({
    rule,
    severity: 'warning',
    where: { in: 'file' },
    message: 'm',
    ...(subject === undefined ? {} : { subject }),
  });

  it.each([
    ['same rule and part', finding('capacitor-voltage-margin', 'C21'), 'One'],
    ['one part of several named in one key', finding('capacitor-voltage-margin', 'C21, C22'), 'One'],
    ['another part', finding('capacitor-voltage-margin', 'C2'), undefined],
    ['an answer to the whole rule', finding('label-plausible', 'input'), 'Two'],
    ['another rule', finding('something-else', 'C21'), undefined],
  ])('%s', (_, given, because) => {
    expect(answerAmong(answers, given)?.because).toBe(because);
  });

  it('stands in the diagnostic', () => {
    const [diagnostic] = placeFindings({ file: 'f', text: FILE }, [finding('label-plausible')], answers);
    expect(diagnostic?.answer).toBe('Two');
  });
});
