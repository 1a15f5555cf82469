import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LOG_RULES } from '../../src/logs/log-rule.ts';
import { readLog } from '../../src/pipeline/read-log.ts';
import { logFile } from './a-log.ts';
import { temporaryFolder } from './content-folder.ts';

const RULES: ReadonlySet<string> = new Set([...LOG_RULES.map(({ id }) => id), 'file-not-utf8']);

const cell = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -2000, max: 100_000 }).map((whole) => String(whole / 100)) },
  fc.constantFrom('', 'NaN', 'inf', '1,5', '"', '"a', '2026-07-12 10:00:00', '10:00', '1e400', '20 V', '\u0000', '٣', '__proto__'),
  fc.string({ maxLength: 6 }),
);
const table = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 30 });
const text = fc
  .tuple(
    fc.constantFrom('t (s),U (V),I (A)', 't (s);U (V);I (A)', '', 'a,b'),
    table,
    fc.constantFrom(',', ';', '\t'),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([head, rows, separator, end]) => [head, ...rows.map((cells) => cells.join(separator))].join(end));

test('whatever a log holds, it is read or its faults are said with a place in it, and nothing is thrown', async () => {
  const path = join(temporaryFolder(), 'run.csv');
  await fc.assert(
    fc.asyncProperty(text, fc.constantFrom('point', 'comma'), async (csv, decimal) => {
      writeFileSync(path, csv);
      const { summary, inEntry, inFile } = await readLog(path, logFile({ decimal }));
      expect(summary !== null || inEntry.length + inFile.length > 0).toBe(true);
      const lines = csv.split(/\r\n|\n|\r/).length;
      for (const { rule, where } of [...inEntry, ...inFile]) {
        expect(RULES.has(rule), rule).toBe(true);
        if (where.in === 'file') expect((where.line ?? 0) >= 1 && (where.line ?? 0) <= lines && (where.column ?? 0) >= 1).toBe(true);
      }
      for (const channel of summary?.channels ?? []) {
        const numbers = [channel.mean.nominal, channel.lowest.value.nominal, channel.highest.value.nominal, channel.deviation];
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(channel.lowest.value.nominal <= channel.highest.value.nominal).toBe(true);
      }
    }),
    { seed: 7_000_114, numRuns: 400 },
  );
});

test('bytes that are no text are said, never read', async () => {
  const path = join(temporaryFolder(), 'run.csv');
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
      writeFileSync(path, bytes);
      const { summary, inEntry, inFile } = await readLog(path, logFile());
      expect(summary).toBeNull();
      expect(inEntry.length + inFile.length).toBeGreaterThan(0);
    }),
    { seed: 99, numRuns: 200 },
  );
});
