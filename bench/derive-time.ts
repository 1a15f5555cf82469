import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { derive } from '../src/derived/derive.ts';
import type { Entry } from '../src/entry/entry.ts';
import { TABLES } from '../src/tables/index.ts';
import { entriesIn } from '../tests/demo/entries-in.ts';
import { generateContent } from './generated-content.ts';

/** Milliseconds within which everything that follows from one entry has to be computed, tables included. */
const LIMIT = 3;
const RUNS = 20;

function generated(count: number): readonly Entry[] {
  const folder = mkdtempSync(join(tmpdir(), 'derive-time-'));
  generateContent(folder, count);
  const entries = entriesIn(join(folder, 'teardowns')).map(({ entry }) => entry);
  rmSync(folder, { recursive: true });
  return entries;
}

/** One line: the median time of one entry over all entries and runs, and the slowest entry's median. */
function report(name: string, entries: readonly Entry[]): void {
  const medians = entries.map(medianOf).sort((one, other) => one - other);
  const median = medians[Math.floor(medians.length / 2)] ?? NaN;
  const parts = entries.reduce((sum, { parts }) => sum + parts.length, 0) / entries.length;
  console.log(
    `${name.padEnd(20)} ${String(entries.length).padStart(3)} entries of ${parts.toFixed(0)} parts: median ${median.toFixed(2)} ms, slowest ${(medians.at(-1) ?? NaN).toFixed(2)} ms` +
      (median > LIMIT ? ': TOO SLOW' : ''),
  );
}

function medianOf(entry: Entry): number {
  const times = Array.from({ length: RUNS }, () => timeOf(entry)).sort((one, other) => one - other);
  return times[Math.floor(RUNS / 2)] ?? NaN;
}

/** A copy each time: what is kept for an entry or a port is so worked out anew, as it is in a build, which meets each entry once. */
function timeOf(original: Entry): number {
  const entry = structuredClone(original);
  const start = performance.now();
  const derived = derive(entry);
  for (const { build } of TABLES) build({ entry, derived });
  return performance.now() - start;
}

const demo = entriesIn(join(import.meta.dirname, '../demo/teardowns')).map(({ entry }) => entry);
const made = generated(12);
const [first] = demo;
const cold = first === undefined ? NaN : timeOf(first);
// The first rounds compile. A build of a thousand entries runs on what they leave, so that is what the limit is for; the first entry
// of all, which pays for the compiling, is printed beside it.
for (const entry of [...demo, ...made]) medianOf(entry);
console.log(
  `All derived values and tables of one entry, compiled code, median of ${String(RUNS)} runs; limit ${String(LIMIT)} ms. The first entry of all: ${cold.toFixed(0)} ms`,
);
report('demo', demo);
report('generated', made);
report('both', [...demo, ...made]);
