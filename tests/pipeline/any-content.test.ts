import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { OWN_STEPS } from '../../src/pipeline/own-steps.ts';
import { prepareEntry } from '../../src/pipeline/prepare-entry.ts';

const DEMO = resolve(import.meta.dirname, '../../demo/teardowns');
const ENTRIES = readdirSync(DEMO)
  .sort()
  .map((slug) => ({
    source: { slug, file: `teardowns/${slug}/index.md`, path: join(DEMO, slug, 'index.md') },
    text: readFileSync(join(DEMO, slug, 'index.md'), 'utf8'),
  }));
const RUNS = 2000;

// Pieces that have broken readers of such files before.
const PIECES = [
  '',
  ' ',
  '\n',
  '\n  ',
  ': ',
  '- ',
  '#',
  ' # ',
  '"',
  "'",
  '{',
  '}',
  '[',
  ']',
  '&a ',
  '*a',
  '!!js/function ',
  '|\n',
  '<<: ',
  '__proto__: ',
  'constructor: ',
  'null',
  '~',
  '-1',
  '0',
  '1e999',
  'NaN',
  '.inf',
  '0x0A01912C',
  '0xFFFFFFFF',
  'µ',
  '\u03BC',
  'Ω',
  '×',
  '⎓',
  '\u0000',
  '\uD800',
  '\uFEFF',
  '9'.repeat(400),
  '–',
  '100 W + 100 W',
  'C1 + C1',
  ':value[',
  '::table{',
  '<script>',
  '---\n',
  '65 W + 65 W',
  '0 V',
  '0 µF 0 V',
  '≤ 0 W',
  '1:0',
  '∞',
];

/** Numbers that look random and are the same on every machine (mulberry32). */
function chance(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * below);
  };
}

function mutated(text: string, draw: (below: number) => number): string {
  let result = text;
  for (let count = 1 + draw(4); count > 0; count -= 1) {
    const from = draw(result.length);
    const to = Math.min(result.length, from + draw(12));
    const kind = draw(4);
    if (kind === 0) result = result.slice(0, from) + result.slice(to);
    else if (kind === 1) result = result.slice(0, from) + (PIECES[draw(PIECES.length)] ?? '') + result.slice(to);
    else if (kind === 2) result = result.slice(0, to) + result.slice(from, to) + result.slice(to);
    else {
      const lines = result.split('\n');
      const [one, other] = [draw(lines.length), draw(lines.length)];
      [lines[one], lines[other]] = [lines[other] ?? '', lines[one] ?? ''];
      result = lines.join('\n');
    }
  }
  return result;
}

test(
  `the demo entries, spoilt ${String(RUNS)} times, give findings with places and never a fault of this program`,
  { timeout: 300_000 },
  () => {
    const draw = chance(20260314);
    const faults: string[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      const entry = ENTRIES[draw(ENTRIES.length)];
      if (entry === undefined) throw new Error('no demo entry');
      const text = mutated(entry.text, draw);
      const lines = text.split('\n').length;
      for (const { rule, message, line, column } of prepareEntry(entry.source, text, OWN_STEPS).record.diagnostics) {
        if (rule === 'internal-fault') faults.push(`run ${String(run)}, ${entry.source.slug}: ${message}`);
        if (line < 1 || column < 1 || line > lines)
          faults.push(`run ${String(run)}, ${entry.source.slug}: ${rule} at ${String(line)}:${String(column)} of ${String(lines)}`);
      }
    }
    expect(faults).toEqual([]);
  },
);
