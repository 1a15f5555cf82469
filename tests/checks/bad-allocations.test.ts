import { describe, expect, test } from 'vitest';
import { checkText } from './read-example.ts';

const HEAD = `---
title: Allocations that cannot be
device: { maker: Larkmoor, model: LM-Q65, kind: desktop charger }
ports:
  C1: { connector: USB-C, power: 65 W }
  C2: { connector: USB-C, power: 30 W }
  A1: { connector: USB-A, power: 18 W }
sharing:
  total: 65 W
  allocations:
`;

/** Errors of an entry with these lines of allocations, as "line:column rule". The first line is line 11, and begins in column 5. */
function errorsOf(lines: string): string[] {
  const { diagnostics } = checkText('lm-q65', `${HEAD}${lines.replace(/^/gmu, '    ')}\n---\n\nText.\n`);
  return diagnostics.filter(({ severity }) => severity === 'error').map(({ line, column, rule }) => `${line}:${column} ${rule}`);
}

describe('an allocation that cannot be is refused at its place', () => {
  test.each([
    ['a port that does not exist', 'C1 + C4: 45 W + 20 W', ['11:10 unknown-port']],
    ['more watts than ports', 'C1 + C2: 45 W + 20 W + 5 W', ['11:14 shares-mismatch']],
    ['fewer watts than ports, and no pool named', 'C1 + C2 + A1: 45 W + 10 W', ['11:19 shares-mismatch']],
    ['a negative share', 'C1 + C2: 45 W + -20 W', ['11:21 unreadable-value']],
    ['a blank share after a plus sign', 'C1 + C2: 45 W +', ['11:19 unreadable-value']],
    ['a blank share between plus signs', 'C1 + C2: 45 W + + 20 W', ['11:19 unreadable-value']],
    ['no shares at all', 'C1 + C2: ""', ['11:14 wrong-shape']],
    ['nothing after the colon', 'C1 + C2:', ['11:5 wrong-shape']],
    ['a blank port', 'C1 +: 45 W', ['11:8 shares-mismatch']],
    ['a blank port in a pool', 'C1 + (C2 + ): 45 W + 15 W', ['11:14 shares-mismatch']],
    ['one port twice', 'C1 + C1: 5 W + 5 W', ['11:10 shares-mismatch']],
    ['volts for watts', 'C1 + C2: 45 V + 20 W', ['11:14 unreadable-value']],
    ['two rows for one set', 'C1 + C2: 45 W + 20 W\nC2 + C1: 20 W + 45 W', ['12:14 same-set-twice']],
    ['an order that leaves a port out', 'C1 + C2: { shares: 45 W + 20 W, order: [C1] }', ['11:37 shares-mismatch']],
  ])('%s', (_, lines, expected) => {
    expect(errorsOf(lines)).toEqual(expected);
  });

  test('half watts and evidence beside each share are no fault', () => {
    const text = `${HEAD}    C1 + C2: 37.5 W measured + 27.5 W printed\n---\n\nText.\n`;
    const { entry, diagnostics } = checkText('lm-q65', text);
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(entry?.sharing?.allocations[0]?.evidence).toBe('printed');
    expect(entry?.sharing?.allocations[0]?.shares.map(({ power, evidence }) => [power.nominal, evidence ?? null])).toEqual([
      [37.5, 'measured'],
      [27.5, null],
    ]);
  });
});
