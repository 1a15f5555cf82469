import { describe, expect, it } from 'vitest';
import { doneByMethod } from '../../../src/derived/bench/done-by-method.ts';
import { logsOnBench } from '../../../src/derived/bench/logs-on-bench.ts';
import { factValue } from '../../../src/derived/fact-value.ts';
import type { Bench } from '../../../src/entry/bench.ts';
import type { Entry } from '../../../src/entry/entry.ts';
import { parseFrontmatter } from '../../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../../src/entry/read-entry.ts';
import { benchInText } from '../../../src/pipeline/bench-in-text.ts';
import { methodWords } from '../../../src/render/made-by.ts';
import { quantity } from '../../../src/render/quantity.ts';
import { foldBackLog } from '../../logs/a-log-summary.ts';

const BENCH: Bench = benchInText(
  [
    'methods:',
    '  Ripple and noise: { how: limited to 20 MHz, for: [ripple, droop] }',
    '  Standby: averaged over five minutes',
    '  Full load: an hour at the connector',
  ].join('\n'),
).bench;

function entryWith(sections: string): Entry {
  const text = `---\ntitle: Trial\nstatus: draft\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nports: { C1: { connector: USB-C, offers: 20 V 5 A } }\n${sections}\n---\n`;
  const { entry } = readEntry({ slug: 'trial', file: 'teardowns/trial/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error('the entry of the test was not read');
  return entry;
}

describe('a measured value and the method that made it', () => {
  it('leads to the method that it names, in any capitals; words of its own stand beside', () => {
    const { entry } = doneByMethod(
      entryWith('measurements: { regulation: [{ value: 5.02 V, output: 5 V, method: "full load; at the far end" }] }'),
      BENCH,
    );
    const [point] = entry.measurements;
    expect(methodWords(point?.method ?? null, point?.byMethod)).toBe('<a href="/bench/#method-full-load">full load</a>; at the far end');
  });

  it('leads to the method that is always used for it, where the entry says nothing', () => {
    const { entry } = doneByMethod(
      entryWith('measurements: { standby: 42 mW, droop: { 5 V: 4.81 V }, thermal: { case top: 61 °C } }'),
      BENCH,
    );
    expect(entry.measurements.map(({ subject, byMethod }) => [subject, byMethod?.map(({ id }) => id)])).toEqual([
      ['standby', ['method-standby']],
      ['thermal', undefined],
      ['droop', ['method-ripple-and-noise']],
    ]);
    const [standby] = entry.measurements;
    expect(standby === undefined ? '' : quantity(factValue(standby.value))).toContain('href="/bench/#method-standby"');
  });

  it('other words of the author stand for another way: the usual method is not claimed', () => {
    const { entry, unknown } = doneByMethod(
      entryWith('measurements: { standby: [{ value: 42 mW, method: reported by its own display }] }'),
      BENCH,
    );
    expect([entry.measurements[0]?.byMethod, unknown]).toEqual([undefined, []]);
  });

  it('what was printed and not measured has no method', () => {
    const { entry } = doneByMethod(entryWith('measurements: { standby: [{ value: 42 mW printed }] }'), BENCH);
    expect(entry.measurements[0]?.byMethod).toBeUndefined();
  });

  it('a word that is nearly a method is said at its place, once', () => {
    const run = '{ line: 230 V, output: 20 V, at: connector, method: Ful load, points: { 3 A: 90 %, 2 A: 89 % } }';
    const { unknown } = doneByMethod(entryWith(`measurements: { efficiency: ${run} }`), BENCH);
    expect(unknown).toEqual([
      { path: ['measurements', 'efficiency', 'method'], message: 'There is no method "Ful load" on the bench. Did you mean "Full load"?' },
    ]);
  });

  it('a log leads to its method from every figure', () => {
    const { entry } = doneByMethod(entryWith('logs: { full load: { file: c1.csv, method: Full load } }'), BENCH);
    const [log] = logsOnBench([foldBackLog()], entry, BENCH);
    const figures = [log?.energy, log?.duration, log?.power.sustained, log?.channels[0]?.highest.value, log?.steps[0]?.changes[0]?.after];
    for (const figure of figures) expect(figure).toMatchObject({ origin: { method: 'method-full-load' } });
  });
});
