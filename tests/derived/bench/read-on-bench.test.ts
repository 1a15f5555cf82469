import { describe, expect, it } from 'vitest';
import { readOnBench } from '../../../src/derived/bench/read-on-bench.ts';
import { instrumentsUsed } from '../../../src/derived/bench/instruments-used.ts';
import { efficiencyRuns } from '../../../src/derived/efficiency/efficiency-runs.ts';
import { factValue } from '../../../src/derived/fact-value.ts';
import type { Bench } from '../../../src/entry/bench.ts';
import type { Entry } from '../../../src/entry/entry.ts';
import { parseFrontmatter } from '../../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../../src/entry/read-entry.ts';
import { benchInText } from '../../../src/pipeline/bench-in-text.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';

const BENCH: Bench = benchInText(
  [
    'instruments:',
    '  meter: { name: AC power meter, accuracy: { power: 0.2 % + 1 digit } }',
    '  load: { name: electronic load, accuracy: { voltage: "0.5 % + 3, 1 mV", current: 0.1 % + 5 mA } }',
    '  probe: { name: thermocouple }',
  ].join('\n'),
).bench;

function entryWith(measurements: string): Entry {
  const text = `---\ntitle: Trial\nstatus: draft\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nports: [{ id: C1, connector: USB-C, offers: 20 V 3 A }]\nmeasurements:\n${measurements}\n---\n`;
  const { entry } = readEntry({ slug: 'trial', file: 'teardowns/trial/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error('the entry of the test was not read');
  return entry;
}

/** Low and high with five digits; what is missing stays missing. */
function span(known: Known): readonly string[] {
  return isMissing(known) ? ['missing'] : [known.low, known.high].map((number) => number.toPrecision(5));
}

describe('a reading and the instrument that made it', () => {
  it('has the published interval of ±(0.5 % + 3) at 2 V with 1 mV: 1.987 V to 2.013 V', () => {
    const { entry } = readOnBench(entryWith('  regulation: [{ value: 2.000 V, output: 2 V, instrument: load }]'), BENCH);
    const [point] = entry.measurements;
    expect(point === undefined ? [] : span(factValue(point.value))).toEqual(['1.9870', '2.0130']);
  });

  it('takes the last written digit where no resolution is stated: 0.2 % of 50.0 W and 0.1 W', () => {
    const { entry } = readOnBench(entryWith('  "sustained power": [{ value: 50.0 W, after: 30 min, instrument: meter }]'), BENCH);
    const [point] = entry.measurements;
    expect(point === undefined ? [] : span(factValue(point.value))).toEqual(['49.800', '50.200']);
  });

  it('gives the efficiency the interval of both instruments', () => {
    const run =
      '  efficiency: { port: C1, line: 230 V, output: 20 V, at: connector, instrument: "meter, load", points: { 3 A: 20.00 V 66.0 W } }';
    const [point] = efficiencyRuns(readOnBench(entryWith(run), BENCH).entry)[0]?.points ?? [];
    // Volts ±0.103, amperes ±0.008, input ±0.232 W: 19.897 × 2.992 / 66.232 and 20.103 × 3.008 / 65.768.
    expect(point === undefined ? [] : span(point.efficiency)).toEqual(['0.89884', '0.91944']);
  });

  const analyser = benchInText(
    'instruments:\n  analyser: { name: power analyser, accuracy: { power: 0.5 % + 10 mW } }\n  other: { name: another, accuracy: { power: 0.5 % + 10 mW } }\n',
  ).bench;

  /** All corners of (P − c) / (1 + g) over (Q − d) / (1 + h), the gains h = g where one instrument read both sides. */
  function corners(output: number, input: number, isOne: boolean): readonly string[] {
    const ends = [-1, 1];
    const ratios = ends.flatMap((g) =>
      ends.flatMap((h) =>
        ends.flatMap((c) =>
          ends.map((d) => {
            const [out, taken] = [output - 0.01 * c - (isOne ? 0 : 0.005 * g * output), input - 0.01 * d - (isOne ? 0 : 0.005 * h * input)];
            return out / taken;
          }),
        ),
      ),
    );
    return [Math.min(...ratios), Math.max(...ratios)].map((number) => number.toPrecision(5));
  }

  it('cancels a gain that both sides share: 60.00 W of 66.00 W on one analyser of 0.5 % and 10 mW', () => {
    const run = (instrument: string): string =>
      `  efficiency: { port: C1, line: 230 V, output: 20 V, at: connector, instrument: ${instrument}, points: { 60.00 W: 66.00 W } }`;
    const of = (instrument: string): readonly string[] => {
      const [point] = efficiencyRuns(readOnBench(entryWith(run(instrument)), analyser).entry)[0]?.points ?? [];
      return point === undefined ? [] : span(point.efficiency);
    };
    // 59.99 / 66.01 and 60.01 / 65.99; with gains of their own 59.69 / 66.34 and 60.31 / 65.66.
    expect(of('analyser')).toEqual(['0.90880', '0.90938']);
    expect(of('analyser')).toEqual(corners(60, 66, true));
    expect(of('"analyser, other"')).toEqual(['0.89976', '0.91852']);
    expect(of('"analyser, other"')).toEqual(corners(60, 66, false));
  });

  it('cancels none where the output is volts times amperes: the gain of one quantity is not that of another', () => {
    const all = benchInText(
      'instruments: { analyser: { name: power analyser, accuracy: { power: 0.5 %, voltage: 0.1 %, current: 0.1 % } } }',
    ).bench;
    const run =
      '  efficiency: { port: C1, line: 230 V, output: 20 V, at: connector, instrument: analyser, points: { 3 A: 20.00 V 66.0 W } }';
    const [point] = efficiencyRuns(readOnBench(entryWith(run), all).entry)[0]?.points ?? [];
    // 19.98 × 2.997 / 66.33 and 20.02 × 3.003 / 65.67.
    expect(point === undefined ? [] : span(point.efficiency)).toEqual(['0.90276', '0.91549']);
  });

  it('keeps a reading as it was where the instrument states nothing for the quantity, and names the instrument', () => {
    const { entry } = readOnBench(entryWith('  thermal: [{ value: 61 °C, place: case top, instrument: probe }]'), BENCH);
    const [value] = entry.measurements.map((point) => factValue(point.value));
    expect(value === undefined || isMissing(value) ? null : [value.low, value.high, value.origin]).toEqual([
      61,
      61,
      expect.objectContaining({ instrument: 'probe' }),
    ]);
  });

  it('reports a name that nobody knows, once, with the nearest; free words without a bench are left alone', () => {
    const entry = entryWith(
      '  thermal: [{ value: 61 °C, place: case top, instrument: prob }, { value: 58 °C, place: side, instrument: prob }]',
    );
    expect(readOnBench(entry, BENCH).unknown).toEqual([
      {
        path: ['measurements', 'thermal', 0, 'instrument'],
        message: 'There is no instrument "prob" on the bench or in this entry. Did you mean "probe"?',
      },
    ]);
    expect(readOnBench(entry, { instruments: [], methods: [] }).unknown).toEqual([]);
  });

  it('lets an entry explain a name of its own, or call an instrument of the bench by it', () => {
    const own = entryWith(
      '  instruments: { meter: an old meter, pm: meter }\n  standby: [{ value: 42 mW, instrument: meter }, { value: 44 mW, instrument: pm }]',
    );
    const { entry, unknown } = readOnBench(own, BENCH);
    expect(unknown).toEqual([]);
    expect(instrumentsUsed(entry, [])).toEqual([['meter', 1]]);
  });

  it('does not touch what was not measured', () => {
    const { entry } = readOnBench(entryWith('  standby: [{ value: 42 mW printed, instrument: meter }]'), BENCH);
    expect(instrumentsUsed(entry, [])).toEqual([]);
  });
});
