import { describe, expect, test } from 'vitest';
import { linesOf, quotedLine } from '../../src/diagnostics/quoted-line.ts';
import { reportText } from '../../src/diagnostics/report-text.ts';
import { aDiagnostic } from './a-diagnostic.ts';

const file = 'teardowns/lm-q100/index.md';
const text = '---\nsharing:\n  allocations:\n    C1: 120 W\n---\n';
const finding = aDiagnostic({
  line: 4,
  column: 9,
  endColumn: 14,
  message: 'C1 gets 120 W here and its own limit is 100 W.',
  why: 'A port cannot give more than it can.',
  advice: 'Check both numbers.',
  source: 'common practice',
});

describe('the report for people', () => {
  test('gives place, severity, rule, message, the line with a pointer, why, what to do, source and the counts', () => {
    expect(reportText([finding], new Map([[file, text]]), { colour: false })).toBe(
      [
        'teardowns/lm-q100/index.md:4:9 warning port-above-own-limit',
        '  C1 gets 120 W here and its own limit is 100 W.',
        '  4 |     C1: 120 W',
        '    |         ^^^^^',
        '  why: A port cannot give more than it can.',
        '  what to do: Check both numbers.',
        '  source: common practice',
        '',
        '0 errors, 1 warning, 0 notes',
        '',
      ].join('\n'),
    );
  });

  test('is sorted by file, line, column and rule, whatever order the findings came in', () => {
    const places = [
      { file: 'b.md', line: 1 },
      { file: 'a.md', line: 10 },
      { file: 'a.md', line: 9, column: 7 },
      { file: 'a.md', line: 9, column: 7, rule: 'a-rule' },
    ];
    const heads = reportText(places.map(aDiagnostic), new Map(), { colour: false })
      .split('\n')
      .filter((line) => line.includes('.md:'));
    expect(heads).toEqual([
      'a.md:9:7 warning a-rule',
      'a.md:9:7 warning port-above-own-limit',
      'a.md:10:1 warning port-above-own-limit',
      'b.md:1:1 warning port-above-own-limit',
    ]);
  });

  test('what a rule says is said once, later with the place of the first time', () => {
    const report = reportText([finding, { ...finding, line: 5 }, { ...finding, line: 6, why: 'For another reason.' }], new Map(), {
      colour: false,
    });
    expect(report.match(/why: A port cannot give more than it can\./g)).toHaveLength(1);
    expect(report).toContain('  why and what to do: as at teardowns/lm-q100/index.md:4:9\n');
    expect(report).toContain('why: For another reason.');
  });

  test('a long report ends with the place of the first error of each file that has one', () => {
    const notes = Array.from({ length: 900 }, (_, index) => aDiagnostic({ file: `${String(index)}.md`, severity: 'note' }));
    const errors = [9, 3].map((line) => aDiagnostic({ file: '450.md', line, severity: 'error' }));
    const report = reportText([...notes, ...errors, aDiagnostic({ file: '7.md', line: 2, severity: 'error' })], new Map(), {
      colour: false,
    });
    expect(report.slice(report.lastIndexOf('\n\n') + 2)).toBe(
      '3 errors, 0 warnings, 900 notes\nerrors are in:\n  450.md:3:1 first of 2 errors\n  7.md:2:1 1 error\n',
    );
  });

  test('an answered finding is counted and not shown', () => {
    const report = reportText([{ ...finding, answer: 'Measured twice.' }], new Map(), { colour: false });
    expect(report).toBe('0 errors, 0 warnings, 0 notes, 1 answered by the author\n');
  });

  test('has no escape sequence unless colour was asked for', () => {
    expect(reportText([finding], new Map([[file, text]]), { colour: false })).not.toContain('\u001b');
    expect(reportText([finding], new Map([[file, text]]), { colour: true })).toContain('\u001b[1;33mwarning\u001b[0m');
  });

  test('a file whose text is not at hand is reported without a quoted line', () => {
    expect(reportText([finding], new Map(), { colour: false })).not.toContain('|');
  });
});

describe('the quoted line', () => {
  test('a tab counts four columns, in the line and under it', () => {
    expect(quotedLine(linesOf('\tC1: 120 W'), aDiagnostic({ column: 6, endColumn: 9 }))).toEqual({
      line: '    C1: 120 W',
      pointer: '        ^^^',
    });
  });

  test('wide characters take two columns, combining marks none', () => {
    expect(quotedLine(linesOf('出力 120 W'), aDiagnostic({ column: 4, endColumn: 7 }))?.pointer).toBe('     ^^^');
    expect(quotedLine(linesOf('出力 120 W'), aDiagnostic({ column: 1, endColumn: 3 }))?.pointer).toBe('^^^^');
    expect(quotedLine(linesOf('e\u0301 120'), aDiagnostic({ column: 4, endColumn: 7 }))?.pointer).toBe('  ^^^');
  });

  test('a long paragraph is cut to the neighbourhood of the span', () => {
    const long = `${'word '.repeat(60)}178 g ${'word '.repeat(60)}`;
    const quoted = quotedLine(linesOf(long), aDiagnostic({ column: 301, endColumn: 306 }));
    const pointed = quoted?.line.slice(quoted.pointer.indexOf('^'), quoted.pointer.length);
    expect(pointed).toBe('178 g');
    expect(quoted?.line.length).toBeLessThan(110);
  });

  test('an escape sequence in the source does not reach the terminal', () => {
    expect(quotedLine(linesOf('\u001b[31mred'), aDiagnostic({}))?.line).toBe('\ufffd[31mred');
  });

  test('a span that runs over the end of its line is marked to the end; a place beyond the text is not quoted', () => {
    expect(quotedLine(linesOf('sharing:\n  C1'), aDiagnostic({ column: 1, endLine: 2, endColumn: 3 }))?.pointer).toBe('^^^^^^^^');
    expect(quotedLine(linesOf('one line'), aDiagnostic({ line: 7 }))).toBeNull();
    expect(quotedLine(linesOf(''), aDiagnostic({}))).toEqual({ line: '', pointer: '^' });
  });

  test('lines end at CR LF, LF or CR, as editors count them', () => {
    expect(quotedLine(linesOf('one\r\ntwo\rthree'), aDiagnostic({ line: 3 }))?.line).toBe('three');
  });
});
