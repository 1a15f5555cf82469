import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchInText } from '../../src/pipeline/bench-in-text.ts';
import type { YamlFault } from '../../src/pipeline/open-yaml.ts';
import { partSheetInText } from '../../src/pipeline/part-sheet-in-text.ts';
import { policyInText } from '../../src/pipeline/policy-in-text.ts';
import { PROJECT_ROOT } from '../../src/pipeline/project-root.ts';

const POLICY = `title: Lines of this bench
meaning: For chargers that stay plugged in.
builds on: consumer-practice
lines:
  - { part class: aluminium electrolytic, quantity: voltage, limit: 70 %, caution: 0.85, source: Opened chargers, roles: [bulk-capacitor] }
  - { part class: transistor, quantity: voltage, limit: 0.8, source: The same }
`;
const PART = `number: VLR-81C
also written: [VLR81C]
maker: Velloric
rating: 700 V, 140 mΩ
corrections:
  - { date: 2026-02-01, where: rating, was: "700 V, 150 mΩ", is: "700 V, 140 mΩ", why: read again }
`;
const BENCH = readFileSync(join(PROJECT_ROOT, 'demo/bench.yaml'), 'utf8');

/** What a slip of the keyboard or a merge leaves behind. */
const JUNK = [
  '[',
  ']',
  '{',
  '}',
  ':',
  '- ',
  '&a ',
  '*a',
  '!!str ',
  '|\n',
  '"',
  "'",
  '\n',
  '  ',
  '#',
  '~',
  '%',
  '? ',
  '\t',
  '\u0000',
  'é',
  '-1 %',
];
const SLIP = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  taken: fc.integer({ min: 0, max: 12 }),
  put: fc.constantFrom('', ...JUNK),
});

function spoilt(text: string, slips: readonly { readonly at: number; readonly taken: number; readonly put: string }[]): string {
  return slips.reduce((left, { at, taken, put }) => {
    const place = Math.floor(at * left.length);
    return left.slice(0, place) + put + left.slice(place + taken);
  }, text);
}

test.each<[string, string, (text: string) => readonly YamlFault[]]>([
  ['bench.yaml', BENCH, (text) => benchInText(text).faults],
  ['a derating policy', POLICY, (text) => policyInText(text, 'lines', 'policies/lines.yaml').faults],
  ['the fact sheet of a part', PART, (text) => partSheetInText(text, { file: 'parts/VLR-81C.yaml', hash: '' }).faults],
])('%s, spoilt, gives faults with places inside it and never an exception', (_, whole, faultsOf) => {
  expect(faultsOf(whole)).toEqual([]);
  fc.assert(
    fc.property(fc.array(SLIP, { minLength: 1, maxLength: 4 }), (slips) => {
      const text = spoilt(whole, slips);
      const lines = text.split('\n').length;
      for (const { line, column, message } of faultsOf(text)) {
        expect(line >= 1 && line <= lines && column >= 1, message).toBe(true);
        expect(message).not.toMatch(/undefined|NaN|\[object/);
      }
    }),
    { seed: 20260314, numRuns: 400 },
  );
});
