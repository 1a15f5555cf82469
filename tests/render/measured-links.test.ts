import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { PreparedSheet } from '../../src/corpus/prepared.ts';
import { doneByMethod } from '../../src/derived/bench/done-by-method.ts';
import { readOnBench } from '../../src/derived/bench/read-on-bench.ts';
import { derive } from '../../src/derived/derive.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { benchInText } from '../../src/pipeline/bench-in-text.ts';
import { drawSheet } from '../../src/render/draw-sheet.ts';
import { buildTables } from '../../src/tables/build-tables.ts';
import { entriesIn } from '../demo/entries-in.ts';

const DEMO = join(import.meta.dirname, '../../demo');
const { bench } = benchInText(readFileSync(join(DEMO, 'bench.yaml'), 'utf8'));

const entries: readonly Entry[] = entriesIn(join(DEMO, 'teardowns')).map(
  ({ entry }) => doneByMethod(readOnBench(entry, bench).entry, bench).entry,
);

/** What stands beside a measurement as its circumstance and is no result: what was set, the air, the time. */
const CIRCUMSTANCES = new Set(['line', 'output', 'ambient', 'after', 'load', 'scale', 'alsoStated']);

interface Measured {
  readonly where: string;
  readonly written: string;
  readonly made: { readonly readOn?: unknown; readonly method?: unknown };
}

/** Everything in an entry that is marked as measured, whatever kind it is of. */
function measuredIn(data: unknown, where: string): readonly Measured[] {
  if (typeof data !== 'object' || data === null) return [];
  const fields = Object.entries(data).filter(([key]) => !CIRCUMSTANCES.has(key));
  const own = ownOf(data, where);
  return [...own, ...fields.flatMap(([key, value]) => measuredIn(value, `${where}.${key}`))];
}

function ownOf(data: object, where: string): readonly Measured[] {
  if (!('evidence' in data) || data.evidence !== 'measured') return [];
  const made = 'madeBy' in data && typeof data.madeBy === 'object' && data.madeBy !== null ? data.madeBy : data;
  const written = 'quantity' in data && typeof data.quantity === 'object' && data.quantity !== null ? data.quantity : data;
  // Turns are counted, and a part without a rating has nothing that was measured.
  if ('rating' in data && data.rating === null) return [];
  return [{ where, written: 'written' in written && typeof written.written === 'string' ? written.written : '', made }];
}

describe.each(entries.map((entry) => [entry.slug, entry] as const))('what was measured on %s', (slug, entry) => {
  test('leads to the instrument or the method of the bench that made it, every kind of it', () => {
    const found = measuredIn(entry, slug);
    expect(found.length).toBeGreaterThan(20);
    expect(found.filter(({ made }) => made.readOn === undefined && made.method === undefined).map(({ where }) => where)).toEqual([]);
  });

  test('is a link wherever a cell of the page shows it', () => {
    const derived = derive(entry);
    const tables = buildTables({ entry, derived });
    const sheet: PreparedSheet = {
      ...{ entry, derived, tables, placed: [], html: '', headings: [], diagnostics: [] },
      photos: entry.photos.map(() => null),
    };
    const drawn = drawSheet(sheet);
    const html = [drawn.title, ...[...drawn.zones, ...drawn.record].flatMap(({ side, matter }) => [side, matter])].join('');
    // Ratings and stresses may print like something that was measured: looked for are figures that stand in measured tables alone.
    const { body, efficiency, measurements, discharged } = entry;
    const shownKinds = measuredIn({ body, efficiency, measurements, discharged }, slug);
    const limits = new Set(derived.efficiency.judgements.map(({ limit }) => `${(limit * 100).toFixed(1)} %`));
    const written = new Set(
      shownKinds.map((one) => one.written).filter((words) => !limits.has(words) && /\d.*(?:%|W|Wh|g|mm|°C)(?: ±.*)?$/.test(words)),
    );
    const cells = [...html.matchAll(/<(td|dd)\b[^>]*>((?:(?!<\/\1>).)*)<\/\1>/gs)].map(([, , inside]) => inside ?? '');
    const shown = cells.filter((inside) => written.has(textOf(inside)));
    expect(shown.length).toBeGreaterThan(1);
    expect(shown.filter((inside) => !inside.includes('<a '))).toEqual([]);
    expect(html).toContain('href="/bench/#');
  });

  test('every link to the bench meets a row of it', () => {
    const known = new Set([...bench.instruments, ...bench.methods].map(({ id }) => id));
    const ids = measuredIn(entry, slug).flatMap(({ made }) => (typeof made.method === 'string' ? [made.method] : []));
    expect(ids.filter((id) => !known.has(id))).toEqual([]);
  });
});

function textOf(html: string): string {
  return html
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ')
    .trim();
}
