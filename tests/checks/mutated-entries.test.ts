import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { reportJson } from '../../src/diagnostics/report-json.ts';
import { reportSarif } from '../../src/diagnostics/report-sarif.ts';
import { reportText } from '../../src/diagnostics/report-text.ts';
import { buildTables } from '../../src/tables/build-tables.ts';
import { tableCsv } from '../../src/tables/table-csv.ts';
import { tableJson } from '../../src/tables/table-json.ts';
import { checkText } from './read-example.ts';

const folder = new URL('../../src/checks/examples/', import.meta.url);
const texts = [
  ...readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8')),
  readFileSync(new URL('../tables/sketch.md', import.meta.url), 'utf8'),
];

/** Slips of the keyboard: a line lost, doubled or moved, a character replaced, digits swapped, a number blown up. */
const slip = fc.record({
  kind: fc.constantFrom('lose line', 'double line', 'replace', 'blow up', 'blow up', 'blow up', 'cut'),
  at: fc.noBias(fc.nat(9999)).map((part) => part / 10_000),
  put: fc.constantFrom('0', '5', '.7', '-', '999999999999', ':', '[', '"', '\u0000', 'Ω', 'null', '{', '\n', ' #', '1e308', '🔌'),
});

function mutated(text: string, slips: readonly { readonly kind: string; readonly at: number; readonly put: string }[]): string {
  return slips.reduce((sofar, { kind, at, put }) => {
    const lines = sofar.split('\n');
    const line = Math.floor(at * lines.length);
    const place = Math.floor(at * sofar.length);
    if (kind === 'lose line') return lines.toSpliced(line, 1).join('\n');
    if (kind === 'double line') return lines.toSpliced(line, 0, lines[line] ?? '').join('\n');
    if (kind === 'blow up') return sofar.slice(0, place) + sofar.slice(place).replace(/\d+/, (digits) => digits + put);
    if (kind === 'cut') return sofar.slice(0, place);
    return sofar.slice(0, place) + put + sofar.slice(place + 1);
  }, text);
}

test('no slip in an entry makes a check, a table or a report throw or print a number that is none', () => {
  let readable = 0;
  fc.assert(
    fc.property(fc.constantFrom(...texts), fc.array(slip, { minLength: 1, maxLength: 2 }), (text, slips) => {
      const broken = mutated(text, slips);
      const { entry, diagnostics } = checkText('broken', broken);
      if (entry !== null) readable += 1;
      const printed = [
        reportText(diagnostics, new Map([['teardowns/broken/index.md', broken]]), { colour: true }),
        reportJson(diagnostics),
        reportSarif(diagnostics),
        ...(entry === null ? [] : buildTables({ entry, derived: derive(entry) }).flatMap((table) => [tableCsv(table), tableJson(table)])),
      ].join('\n');
      expect(diagnostics.map((diagnostic) => diagnostic.message).join('\n')).not.toMatch(/\bNaN\b|\bundefined\b|\[object/);
      expect(printed).not.toMatch(/\bNaN\b|\bundefined\b|\[object/);
      for (const { line, column, endLine, endColumn } of diagnostics)
        expect([line, column, endLine, endColumn].every((number) => number >= 1)).toBe(true);
    }),
    { seed: 20260402, numRuns: 1500 },
  );
  // Slips that leave no entry exercise the reader only.
  expect(readable).toBeGreaterThan(700);
}, 120_000);
