import { describe, expect, it } from 'vitest';
import { doneByMethod } from '../../../src/derived/bench/done-by-method.ts';
import { instrumentsUsed } from '../../../src/derived/bench/instruments-used.ts';
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

  it('a method done with one instrument names it and widens by its accuracy; one done with several counts for each', () => {
    const { bench } = benchInText(
      [
        'instruments:',
        '  balance: { name: balance, accuracy: { mass: 0.5 g } }',
        '  calipers: { name: callipers }',
        '  gauges: { name: gauges }',
        'methods:',
        '  Weighing: { how: three times, for: mass, with: balance }',
        '  Distances: { how: under a lens, for: insulation, with: [calipers, gauges] }',
      ].join('\n'),
    );
    const { entry } = doneByMethod(
      entryWith('body: { mass: 187 g measured, basis: cased }\ninsulation: { barrier: { clearance: 6.2 mm, creepage: 7.6 mm } }'),
      bench,
    );
    const mass = entry.body.mass === null ? null : factValue(entry.body.mass);
    expect(mass).toMatchObject({ low: 0.1865, high: 0.1875, origin: { instrument: 'balance', method: 'method-weighing' } });
    expect(instrumentsUsed(entry, [])).toEqual([
      ['balance', 1],
      ['calipers', 2],
      ['gauges', 2],
    ]);
  });

  it('each of several ports that were loaded at once leads to it, and every section of the format that was measured', () => {
    const { bench } = benchInText(
      'methods: { Efficiency: four wires, Shares: { how: one by one, for: sharing }, Offers: { how: word by word, for: ports }, Edges: { how: callipers, for: size }, Values: { how: a meter, for: [parts, stages] } }',
    );
    const sections = [
      'body: { size: 60 × 40 × 20 mm, basis: cased }',
      'sharing: { allocations: { C1: 100 W } }',
      'stages: { main: { is: flyback, Lm: 95 µH measured } }',
      'parts: { main: { L1: { role: inductor, rating: 3.3 µH measured } } }',
      'measurements: { efficiency: { port: "C1 + C1x", output: 20 V, points: { 50 %: "20 V 1 A + 20 V 1 A, 44 W" } } }',
    ];
    const { entry } = doneByMethod(entryWith(sections.join('\n')), bench);
    const [point] = entry.efficiency;
    expect([...(point?.loads ?? []).map(({ current }) => current?.method), point?.input?.method]).toEqual(
      Array(3).fill('method-efficiency'),
    );
    expect([
      entry.body.size?.method,
      entry.sharing?.allocations[0]?.madeBy?.method,
      entry.ports[0]?.madeBy?.method,
      entry.stages[0]?.parameters['Lm']?.method,
      entry.parts[0]?.madeBy?.method,
    ]).toEqual(['method-edges', 'method-shares', 'method-offers', 'method-values', 'method-values']);
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
